import type { Wire } from "@copperwright/engine";
import { memo, type ReactNode, useState } from "react";
import { SelectField } from "../../entry/SelectField.tsx";
import { TextField } from "../../entry/TextField.tsx";
import { colourWords, WireSwatch } from "../../frame/WireSwatch.tsx";
import { choose, useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import { RecordWire } from "./RecordWire.tsx";
import { STATUSES } from "./statuses.ts";

const FIRST_COUNT = 60;

/** Wires as they were found: what becomes of each, and its condition. */
export function FoundWiring(): ReactNode {
  const wires = useBench((bench) => bench.document!.job.wires);
  const [words, setWords] = useState("");
  const [mostCount, setMost] = useState(FIRST_COUNT);
  const asked = words.toLowerCase().split(/\s+/).filter(Boolean);
  const found = wires.filter((wire) => {
    const text =
      `${wire.number ?? wire.id} ${wire.from} ${wire.to} ${colourWords(wire.colour)} ${wire.status} ${wire.note ?? ""}`.toLowerCase();
    return asked.every((word) => text.includes(word));
  });
  return (
    <div className="found-wiring">
      <RecordWire />
      <label className="picker-find">
        <span className="note">find by number, colour, terminal or condition</span>
        <input className="field" value={words} onChange={(event) => setWords(event.target.value)} />
      </label>
      <ul className="found-rows">
        {found.slice(0, mostCount).map((wire) => (
          <FoundRow key={wire.id} wire={wire} />
        ))}
      </ul>
      {found.length > mostCount && (
        <button type="button" className="act" onClick={() => setMost(found.length)}>
          show the other {found.length - mostCount}
        </button>
      )}
    </div>
  );
}

const FoundRow = memo(function FoundRow({ wire }: { wire: Wire }): ReactNode {
  const number = wire.number ?? wire.id;
  const set = (what: string, path: string, value: string): void =>
    void edit(`wire ${number}: ${what}`, {
      op: "set",
      list: "wires",
      id: wire.id,
      path: [path],
      ...(value === "" ? {} : { value }),
    });
  return (
    <li className="found-row">
      <button
        type="button"
        className="plain found-wire"
        onClick={() => choose({ kind: "wire", id: wire.id })}
      >
        <b>{number}</b>
        <WireSwatch colour={wire.colour} widthPx={48} />
        <span>{colourWords(wire.colour)}</span>
        <span className="note">
          {wire.from} to {wire.to}
        </span>
      </button>
      <SelectField
        label={`wire ${number} is`}
        value={wire.status}
        choices={STATUSES}
        onChoice={(status) => set("what becomes of it", "status", status)}
      />
      <TextField
        label={`condition of wire ${number}`}
        value={wire.note ?? ""}
        placeholder="hard, bodged, black with oil"
        mayBeEmpty
        onText={(note) => set("condition", "note", note)}
      />
    </li>
  );
});
