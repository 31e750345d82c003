import type { Job, ProveResult } from "@copperwright/engine";
import { type ReactNode, useMemo } from "react";
import { choose, useBench } from "../../store/benchStore.ts";
import { useProofRun } from "./proofRun.ts";

type TruthRow = ProveResult["truth"][number];

/** What every switch does, as one would say it: in these positions these light, those stay dark. Combinations that do the same stand in one row. */
export function TruthTable(): ReactNode {
  const truth = useProofRun((run) => run.result?.truth ?? null);
  const job = useBench((bench) => bench.document!.job);
  const words = useMemo(() => truthWords(job), [job]);
  const chosen = useBench((bench) => bench.chosen?.id ?? null);
  if (truth === null)
    return <p className="waiting note">The truth table comes with the full proof.</p>;
  const touches = ({ when, lit, dead }: TruthRow): boolean =>
    chosen === null ||
    Object.hasOwn(when, chosen) ||
    [...lit, ...dead].some((ref) => ref.split(":")[0] === chosen);
  const own = truth.filter(touches);
  const rows = own.length === 0 ? truth : own;
  return (
    <div className="proof-open">
      <h1>What the switches do</h1>
      {rows.length < truth.length && (
        <p className="proof-filter">
          {rows.length} of {truth.length} rows touch {chosen}
          <button type="button" className="act small" onClick={() => choose(null)}>
            show all
          </button>
        </p>
      )}
      <div className="proof-scroll">
        <table className="proof-table">
          <thead>
            <tr>
              <th scope="col">with</th>
              <th scope="col">engine</th>
              <th scope="col">works</th>
              <th scope="col">stays dark</th>
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={JSON.stringify([row.when, row.engine, row.lit])}>
                <td>{words.when(row.when)}</td>
                <td>{words.engine(row.engine)}</td>
                <td>
                  <b>{words.loads(row.lit)}</b>
                  {row.differsWhenHeld.length > 0 && (
                    <span className="note">
                      {" "}
                      depends on what was pressed first: {row.differsWhenHeld.join(", ")}
                    </span>
                  )}
                </td>
                <td className="note">{words.loads(row.dead)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
    </div>
  );
}

/** Names in place of ids. */
export function truthWords(job: Job) {
  const parts = new Map(job.parts.map((part) => [part.id, part]));
  const nameOf = (id: string): string => parts.get(id)?.name || id;
  const positionOf = (id: string, position: string): string => {
    const part = parts.get(id);
    const found =
      part?.kind === "switch" ? part.positions.find((one) => one.id === position) : null;
    return found?.name || position;
  };
  return {
    when: (when: TruthRow["when"]): string => {
      const said = Object.entries(when).map(([id, positions]) => {
        const words = positions.map((position) => positionOf(id, position)).join(" or ");
        return id === "@flash" ? `flasher ${words}` : `${nameOf(id)} ${words}`;
      });
      return said.length === 0 ? "whatever the switches do" : said.join(", ");
    },
    engine: (engine: readonly string[]): string => (engine.length >= 4 ? "any" : engine.join(", ")),
    loads: (refs: readonly string[]): string => refs.map((ref) => loadWords(ref)).join(", "),
  };

  function loadWords(ref: string): string {
    const [id = ref, element = ""] = ref.split(":");
    const part = parts.get(id);
    const isOneOfSeveral = part?.kind === "lamp" && part.filaments.length > 1;
    return isOneOfSeveral ? `${nameOf(id)} ${element.split("-")[0]}` : nameOf(id);
  }
}
