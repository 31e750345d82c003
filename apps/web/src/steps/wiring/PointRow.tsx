import type { Body } from "@copperwright/engine";
import type { ReactNode } from "react";
import { SelectField } from "../../entry/SelectField.tsx";
import { TextField } from "../../entry/TextField.tsx";
import { useBench } from "../../store/benchStore.ts";
import { editField } from "../../store/editField.ts";
import { takeAway } from "./wiringEdit.ts";

const CONDITIONS = [
  { value: "bare", word: "bare metal" },
  { value: "painted", word: "painted" },
  { value: "plated", word: "plated" },
];

type PointRowProps = {
  readonly body: Body;
  readonly point: Body["points"][number];
  readonly index: number;
};

/** An earth point: its name, where it is, what the metal under the ring is like, what lies on it. */
export function PointRow({ body, point, index }: PointRowProps): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const ref = `${body.id}.${point.id}`;
  const isOn = ({ from, to }: { from: string; to: string }): boolean => from === ref || to === ref;
  const wires = job.wires.filter(isOn).map(({ id, number }) => number ?? id);
  const bonds = job.bonds.filter(isOn).map(({ id }) => id);
  const set = (what: string, path: string, value: string): void =>
    editField(`${ref}: ${what}`, { list: "bodies", id: body.id }, ["points", index, path], value);
  return (
    <li className="wiring-row" aria-label={`Earth point ${ref}`}>
      <TextField
        label={`name of ${ref}`}
        value={point.name ?? ""}
        mayBeEmpty
        onText={(name) => set("name", "name", name)}
      />
      <SelectField
        label="at"
        value={point.station ?? ""}
        none="not said"
        choices={job.stations.map((one) => ({ value: one.id, word: one.name }))}
        onChoice={(station) => set("place", "station", station)}
      />
      <SelectField
        label="metal"
        value={point.condition ?? ""}
        none="not said"
        choices={CONDITIONS}
        onChoice={(condition) => set("metal", "condition", condition)}
      />
      <p className="note">
        {[...wires, ...bonds].length === 0 ? "nothing on it" : [...wires, ...bonds].join(", ")}
      </p>
      <button
        type="button"
        className="act small"
        aria-label={`remove earth point ${ref}`}
        onClick={() => void takeAway(`remove earth point ${ref}`, "points", ref)}
      >
        remove
      </button>
    </li>
  );
}
