import type { ReactNode } from "react";
import { colourWords, WireSwatch } from "../../frame/WireSwatch.tsx";
import { useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";

/** Where the chosen wire runs: the shortest way, or by the stations it is told to pass. */
export function WireRoutes(): ReactNode {
  const chosen = useBench((bench) => bench.chosen);
  const job = useBench((bench) => bench.document?.job);
  const wire = job?.wires.find(({ id }) => chosen?.kind === "wire" && id === chosen.id);
  if (job === undefined || wire === undefined) return null;
  const via = wire.via ?? [];
  const number = wire.number ?? wire.id;
  const put = (stations: readonly string[], what: string): void => {
    const value = stations.length === 0 ? undefined : stations;
    void edit(`wire ${number} ${what}`, {
      op: "set",
      list: "wires",
      id: wire.id,
      path: ["via"],
      value,
    });
  };
  const nameOf = (id: string): string =>
    job.stations.find((station) => station.id === id)?.name ?? id;
  return (
    <section aria-label={`Way of wire ${number}`}>
      <h2>
        Wire {number} <WireSwatch colour={wire.colour} />{" "}
        <span className="note">{colourWords(wire.colour)}</span>
      </h2>
      <p className="care-row">
        {wire.from} to {wire.to}:{" "}
        {via.length === 0 ? "the shortest way" : `by ${via.map(nameOf).join(", ")}`}
        {via.length > 0 && (
          <button type="button" className="act small" onClick={() => put([], "the shortest way")}>
            the shortest way again
          </button>
        )}
      </p>
      <label className="loom-row">
        <span className="note">pass a station on the way</span>
        <select
          className="field"
          value=""
          onChange={(event) =>
            put([...via, event.target.value], `by ${nameOf(event.target.value)}`)
          }
        >
          <option value="">choose</option>
          {job.stations
            .filter(({ id }) => !via.includes(id))
            .map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
        </select>
      </label>
    </section>
  );
}
