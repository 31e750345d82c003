import { type ReactNode, useState } from "react";
import { choose, useBench } from "../../store/benchStore.ts";
import { ConnectorForm } from "./ConnectorForm.tsx";
import { JointForm } from "./JointForm.tsx";
import { jointKinds } from "./jointKinds.ts";
import "./wiring.css";

type Adding = "joint" | "connector";

/** Joints and connectors of the machine, and new ones in its wires. */
export function Meetings(): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const [adding, setAdding] = useState<Adding | null>(null);
  const nameOf = (id: string | undefined): string =>
    job.stations.find((one) => one.id === id)?.name ?? "";
  const runOf = (id: string): string => {
    const run = job.runs.find((one) => one.id === id);
    return run === undefined ? id : `${nameOf(run.from)} to ${nameOf(run.to)}`;
  };
  const rows = [
    ...job.joints.map(({ id, name, kind, ways, station, offset }) => ({
      of: "joint" as const,
      id,
      name: name ?? id,
      what: `${jointKinds.find(({ value }) => value === kind)?.word ?? kind}, ${ways.length} ways`,
      place: offset === undefined ? nameOf(station) : runOf(offset.run),
    })),
    ...job.connectors.map(({ id, name, kind, cavities, station }) => ({
      of: "connector" as const,
      id,
      name: name || id,
      what: `${kind}, ${cavities.length} cavities`,
      place: nameOf(station),
    })),
  ];
  return (
    <div className="meetings">
      <div className="slip-verbs">
        {(["joint", "connector"] as const).map((one) => (
          <button
            key={one}
            type="button"
            className="act"
            aria-expanded={adding === one}
            onClick={() => setAdding(adding === one ? null : one)}
          >
            {one === "joint" ? "add a joint" : "add a connector"}
          </button>
        ))}
      </div>
      {adding !== null && (
        <section
          className="wiring-form"
          aria-label={adding === "joint" ? "A new joint" : "A new connector"}
        >
          {adding === "joint" ? (
            <JointForm wire={null} onDone={() => setAdding(null)} />
          ) : (
            <ConnectorForm wire={null} onDone={() => setAdding(null)} />
          )}
        </section>
      )}
      <ul className="meeting-list" aria-label="Joints and connectors">
        {rows.map(({ of, id, name, what, place }) => (
          <li key={`${of} ${id}`}>
            <button type="button" className="figure-link" onClick={() => choose({ kind: of, id })}>
              {name}
            </button>{" "}
            <span className="note">
              {of}, {what}
              {place === "" ? ", place not said" : `, ${place}`}
            </span>
          </li>
        ))}
      </ul>
    </div>
  );
}
