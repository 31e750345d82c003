import type { Wire } from "@copperwright/engine";
import type { ReactNode } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { SelectField } from "../../entry/SelectField.tsx";
import { useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import { passStation, setVia } from "./passStation.ts";

/** The way of a wire through the loom: the stations it passes now, and those it must pass. */
export function WayFields({ wire }: { wire: Wire }): ReactNode {
  const stations = useBench((bench) => bench.document!.job.stations);
  const { answer: facts } = useAnswer("circuitsWire", wire.id);
  const nameOf = (id: string): string => stations.find((one) => one.id === id)?.name ?? id;
  const via = wire.via ?? [];
  const number = wire.number ?? wire.id;
  const put = (next: readonly string[], what: string): void =>
    void edit(`wire ${number} ${what}`, setVia(wire.id, next));
  return (
    <>
      <p className="note">
        {facts === null || facts.stations.length === 0
          ? "Its way is not known: its ends stand at no station, or no run leads there."
          : `It goes ${facts.stations.map(nameOf).join(", ")}.`}
      </p>
      {wire.lengthMm !== undefined && (
        <p className="note">Its length was typed; the way does not change it.</p>
      )}
      <div className="slip-verbs">
        {via.map((id) => (
          <button
            key={id}
            type="button"
            className="act small"
            onClick={() =>
              put(
                via.filter((one) => one !== id),
                `need not pass ${nameOf(id)}`,
              )
            }
          >
            need not pass {nameOf(id)}
          </button>
        ))}
        {via.length > 1 && (
          <button type="button" className="act small" onClick={() => put([], "the shortest way")}>
            the shortest way again
          </button>
        )}
      </div>
      <div className="loom-row">
        <SelectField
          label="must pass"
          value=""
          none={via.length === 0 ? "nothing: the shortest way" : "no further station"}
          choices={stations
            .filter(({ id }) => !via.includes(id))
            .map(({ id, name }) => ({ value: id, word: name }))}
          onChoice={(id) => {
            if (id !== "") void passStation(wire.id, id);
          }}
        />
      </div>
    </>
  );
}
