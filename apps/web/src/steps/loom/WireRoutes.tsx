import type { ReactNode } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { SelectField } from "../../entry/SelectField.tsx";
import { colourWords, WireSwatch } from "../../frame/WireSwatch.tsx";
import { choose, useBench } from "../../store/benchStore.ts";
import { WayFields } from "./WayFields.tsx";

/** Where a wire runs: pulled over a station on the machine above, or by the stations named here. */
export function WireRoutes(): ReactNode {
  const chosen = useBench((bench) => bench.chosen);
  const wires = useBench((bench) => bench.document!.job.wires);
  const wire = wires.find(({ id }) => chosen?.kind === "wire" && id === chosen.id);
  return (
    <section aria-label="Way of a wire">
      <h2>Way of a wire</h2>
      <div className="loom-row">
        <SelectField
          label="wire"
          value={wire?.id ?? ""}
          none="choose one, here or anywhere"
          choices={wires.map(({ id, number, from, to }) => ({
            value: id,
            word: `${number ?? id}, ${from} to ${to}`,
          }))}
          onChoice={(id) => choose(id === "" ? null : { kind: "wire", id })}
        />
      </div>
      {wire !== undefined && (
        <>
          <p className="care-row">
            <b>{wire.number ?? wire.id}</b> <WireSwatch colour={wire.colour} />{" "}
            <span className="note">{colourWords(wire.colour)}</span> {wire.from} to {wire.to}
          </p>
          <WayWords wire={wire.id} />
          <WayFields wire={wire} />
        </>
      )}
    </section>
  );
}

function WayWords({ wire }: { wire: string }): ReactNode {
  const { answer } = useAnswer("loomWay", wire);
  if (answer === null || answer.length > 0) {
    return (
      <p className="note">Pull its line on the machine onto a station, and it passes there.</p>
    );
  }
  return null;
}
