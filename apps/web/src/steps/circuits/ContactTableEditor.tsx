import type { PartOf } from "@copperwright/engine";
import { contactGroups } from "@copperwright/engine/words";
import { type ReactNode, useState } from "react";
import { TextField } from "../../entry/TextField.tsx";
import { edit } from "../../store/editing.ts";
import { circuitsEdit } from "./circuitsEdit.ts";

type Switch = PartOf<"switch">;
type Position = Switch["positions"][number];

/** A contact table filled in as a meter finds it: in a row tap the terminal of one probe, then that of the other. */
export function ContactTableEditor({ part }: { part: Switch }): ReactNode {
  const [probe, setProbe] = useState<{ position: string; pin: string } | null>(null);
  const [isNaming, setNaming] = useState(false);
  const name = part.name || part.id;
  const tap = (position: string, pin: string): void => {
    const isFirst = probe === null || probe.position !== position;
    setProbe(isFirst ? { position, pin } : null);
    if (isFirst || probe.pin === pin) return;
    const change = { does: "contact" as const, part: part.id, position, a: probe.pin, b: pin };
    void circuitsEdit(`${name} ${position}: ${probe.pin} and ${pin}`, change);
  };
  return (
    <div className="table-editor" role="group" aria-label={`Contact table of ${name}`}>
      <p className="note" aria-live="polite">
        {probe === null
          ? "Tap the two terminals the meter lies on; joined or apart changes over."
          : `One probe on ${probe.pin} in ${probe.position}: tap the other.`}
      </p>
      <table className="contact-edit">
        <thead>
          <tr>
            <th scope="col">position</th>
            {part.pins.map(({ id }) => (
              <th key={id} scope="col">
                {id}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {part.positions.map((row) => (
            <Row key={row.id} part={part} row={row} probe={probe} onTap={tap} isNaming={isNaming} />
          ))}
        </tbody>
      </table>
      <div className="slip-verbs">
        <AddPosition part={part} />
        <button
          type="button"
          className="act small"
          aria-pressed={isNaming}
          onClick={() => setNaming(!isNaming)}
        >
          {isNaming ? "done" : "rename or remove positions"}
        </button>
      </div>
    </div>
  );
}

type RowProps = {
  readonly part: Switch;
  readonly row: Position;
  readonly probe: { readonly position: string; readonly pin: string } | null;
  readonly onTap: (position: string, pin: string) => void;
  readonly isNaming: boolean;
};

function Row({ part, row, probe, onTap, isNaming }: RowProps): ReactNode {
  const pins = part.pins.map(({ id }) => id);
  const groups = contactGroups(pins, row.joins);
  return (
    <tr>
      <th scope="row">
        {isNaming ? <NamePosition part={part} row={row} /> : <PositionWord part={part} row={row} />}
      </th>
      {pins.map((id, column) => {
        const lane = groups.findIndex((group) => group.includes(id));
        const group = groups[lane];
        const isHeld = probe?.position === row.id && probe.pin === id;
        const words =
          group === undefined
            ? "joined with nothing"
            : `joined with ${group.filter((pin) => pin !== id).join(", ")}`;
        return (
          <td key={id}>
            <button
              type="button"
              className={isHeld ? "contact-cell held" : "contact-cell"}
              aria-label={`${row.name ?? row.id}, ${id}: ${words}`}
              aria-pressed={isHeld}
              onClick={() => onTap(row.id, id)}
            >
              <Dot column={column} pins={pins} groups={groups} />
            </button>
          </td>
        );
      })}
    </tr>
  );
}

/** Joined terminals are dots on one line; groups of one row lie at heights of their own; a terminal a line passes by keeps its open ring. */
function Dot({
  column,
  pins,
  groups,
}: {
  column: number;
  pins: readonly string[];
  groups: readonly (readonly string[])[];
}): ReactNode {
  const heightOf = (lane: number): number => 12 + 10 * (lane % 3);
  const lane = groups.findIndex((group) => group.includes(pins[column] ?? ""));
  return (
    <svg viewBox="0 0 44 44" aria-hidden="true">
      {groups.map((group, k) => {
        const at = group.map((pin) => pins.indexOf(pin));
        const [first, last] = [Math.min(...at), Math.max(...at)];
        if (column < first || column > last) return null;
        return (
          <line
            key={group.join(" ")}
            x1={column === first ? 22 : 0}
            x2={column === last ? 22 : 44}
            y1={heightOf(k)}
            y2={heightOf(k)}
            stroke="currentColor"
            strokeWidth="2.5"
          />
        );
      })}
      <circle
        cx="22"
        cy={lane < 0 ? 36 : heightOf(lane)}
        r={lane < 0 ? 4 : 6}
        fill={lane < 0 ? "var(--sheet)" : "currentColor"}
        stroke="currentColor"
        strokeWidth="1.5"
      />
    </svg>
  );
}

function PositionWord({ part, row }: { part: Switch; row: Position }): ReactNode {
  const isRest = part.rest === row.id;
  return (
    <>
      {row.name ?? row.id}
      {isRest && <span className="note"> rest</span>}
    </>
  );
}

function NamePosition({ part, row }: { part: Switch; row: Position }): ReactNode {
  const word = row.name ?? row.id;
  return (
    <>
      <TextField
        label={row.id}
        value={word}
        onText={(name) =>
          void circuitsEdit(`rename ${word}`, {
            does: "rename-position",
            part: part.id,
            position: row.id,
            name,
          })
        }
      />
      {part.rest !== row.id && (
        <span className="slip-verbs">
          <button
            type="button"
            className="act small"
            onClick={() =>
              void edit(`${part.name} rests at ${word}`, {
                op: "set",
                list: "parts",
                id: part.id,
                path: ["rest"],
                value: row.id,
              })
            }
          >
            rest
          </button>
          <button
            type="button"
            className="act small"
            onClick={() =>
              void circuitsEdit(`remove position ${word}`, {
                does: "remove-position",
                part: part.id,
                position: row.id,
              })
            }
          >
            remove
          </button>
        </span>
      )}
    </>
  );
}

function AddPosition({ part }: { part: Switch }): ReactNode {
  const [name, setName] = useState<string | null>(null);
  if (name === null) {
    return (
      <button type="button" className="act small" onClick={() => setName("")}>
        add a position
      </button>
    );
  }
  return (
    <TextField
      label="name of the new position"
      value={name}
      onText={(text) => {
        setName(null);
        void circuitsEdit(`position ${text}`, { does: "add-position", part: part.id, name: text });
      }}
    />
  );
}
