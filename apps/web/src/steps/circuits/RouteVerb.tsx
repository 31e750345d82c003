import type { Wire } from "@copperwright/engine";
import type { ReactNode } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { SelectField } from "../../entry/SelectField.tsx";
import { useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";

/** The way of a wire through the loom: the stations it passes now, and those it must pass. */
export function RouteVerb({ wire }: { wire: Wire }): ReactNode {
  const stations = useBench((bench) => bench.document!.job.stations);
  const { answer: facts } = useAnswer("circuitsWire", wire.id);
  const nameOf = (id: string): string => stations.find((one) => one.id === id)?.name ?? id;
  const via = wire.via ?? [];
  const put = (next: readonly string[]): void =>
    void edit(`route of wire ${wire.number ?? wire.id}`, {
      op: "set",
      list: "wires",
      id: wire.id,
      path: ["via"],
      ...(next.length === 0 ? {} : { value: next }),
    });
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
      {via.map((id) => (
        <button
          key={id}
          type="button"
          className="act small"
          onClick={() => put(via.filter((one) => one !== id))}
        >
          need not pass {nameOf(id)}
        </button>
      ))}
      <SelectField
        label="must pass"
        value=""
        none="no further station"
        choices={stations
          .filter(({ id }) => !via.includes(id))
          .map(({ id, name }) => ({ value: id, word: name }))}
        onChoice={(id) => id !== "" && put([...via, id])}
      />
    </>
  );
}
