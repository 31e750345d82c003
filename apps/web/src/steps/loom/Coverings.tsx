import type { ReactNode } from "react";
import { useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";

const COVERINGS = [
  ["pvc-sleeve", "PVC sleeve"],
  ["woven-sleeve", "woven sleeve"],
  ["tape", "tape"],
  ["heat-shrink", "heat shrink"],
  ["open", "open"],
] as const;

/** What covers each loom. */
export function Coverings(): ReactNode {
  const looms = useBench((bench) => bench.document?.job.looms ?? []);
  const put = (id: string, name: string, covering: string): void => {
    const value = covering === "" ? undefined : covering;
    void edit(`${name}: ${covering || "covering left open"}`, {
      op: "set",
      list: "looms",
      id,
      path: ["covering"],
      value,
    });
  };
  return (
    <section aria-label="Covering">
      <h2>Covering</h2>
      <ul className="loom-rows">
        {looms.map(({ id, name, covering }) => (
          <li key={id}>
            <label className="loom-row">
              <b>{name}</b>
              <select
                className="field"
                value={covering ?? ""}
                onChange={(event) => put(id, name, event.target.value)}
              >
                <option value="">not chosen</option>
                {COVERINGS.map(([value, word]) => (
                  <option key={value} value={value}>
                    {word}
                  </option>
                ))}
              </select>
            </label>
          </li>
        ))}
      </ul>
    </section>
  );
}
