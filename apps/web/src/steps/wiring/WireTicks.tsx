import type { Wire } from "@copperwright/engine";
import type { ReactNode } from "react";
import { colourWords, WireSwatch } from "../../frame/WireSwatch.tsx";

type WireTicksProps = {
  readonly label: string;
  readonly wires: readonly Wire[];
  readonly ticked: ReadonlySet<string>;
  readonly onTicked: (ticked: ReadonlySet<string>) => void;
};

/** Wires to be ticked, with all and none at once. */
export function WireTicks({ label, wires, ticked, onTicked }: WireTicksProps): ReactNode {
  const count = wires.filter(({ id }) => ticked.has(id)).length;
  const turn = (id: string): void => {
    const next = new Set(ticked);
    if (!next.delete(id)) next.add(id);
    onTicked(next);
  };
  return (
    <fieldset className="wire-ticks">
      <legend className="note">
        {label}: {count} of {wires.length}
      </legend>
      <div className="slip-verbs">
        <button
          type="button"
          className="act small"
          onClick={() => onTicked(new Set([...ticked, ...wires.map(({ id }) => id)]))}
        >
          all
        </button>
        <button
          type="button"
          className="act small"
          onClick={() =>
            onTicked(new Set([...ticked].filter((id) => !wires.some((wire) => wire.id === id))))
          }
        >
          none
        </button>
      </div>
      <ul>
        {wires.map((wire) => (
          <li key={wire.id}>
            <label className="tick-row">
              <input type="checkbox" checked={ticked.has(wire.id)} onChange={() => turn(wire.id)} />
              <b>{wire.number ?? wire.id}</b>
              <WireSwatch colour={wire.colour} widthPx={36} heightPx={12} />
              <span className="note">
                {colourWords(wire.colour)}, {wire.from} to {wire.to}
              </span>
            </label>
          </li>
        ))}
      </ul>
    </fieldset>
  );
}
