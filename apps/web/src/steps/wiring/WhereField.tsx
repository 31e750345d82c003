import { printQuantity } from "@copperwright/engine/words";
import { type ReactNode, useId, useState } from "react";
import { LengthField } from "../../entry/LengthField.tsx";
import { SelectField } from "../../entry/SelectField.tsx";
import { useBench } from "../../store/benchStore.ts";
import type { WireWay } from "./wiringAnswers.ts";
import type { Where } from "./wiringChange.ts";

type WhereFieldProps = {
  readonly value: Where | null;
  readonly onWhere: (where: Where | null) => void;
  /** Places on a wire's way stand first and are said to be on it. */
  readonly way?: WireWay | null;
  readonly label?: string;
};

const keyOf = (where: Where | null): string =>
  where === null ? "" : where.kind === "station" ? `s ${where.station}` : `r ${where.run}`;

/** A place along the loom: a station, or so many mm along a run; slid or typed. */
export function WhereField({ value, onWhere, way, label = "at" }: WhereFieldProps): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const nameOf = (id: string): string => job.stations.find((one) => one.id === id)?.name ?? id;
  const choices = [
    ...job.stations.map(({ id, name }) => ({
      value: `s ${id}`,
      word: name,
      isOnWay: way?.stations.includes(id) ?? false,
    })),
    ...job.runs
      .filter(({ lengthMm }) => lengthMm !== undefined)
      .map(({ id, from, to }) => ({
        value: `r ${id}`,
        word: `along ${nameOf(from)} to ${nameOf(to)}`,
        isOnWay: way?.runs.includes(id) ?? false,
      })),
  ]
    .sort((a, b) => Number(b.isOnWay) - Number(a.isOnWay))
    .map(({ value: key, word, isOnWay }) => ({
      value: key,
      word: isOnWay ? `${word}, on its way` : word,
    }));
  const take = (key: string): void => {
    const id = key.slice(2);
    const run = key.startsWith("r ") ? job.runs.find((one) => one.id === id) : undefined;
    if (key === "") onWhere(null);
    else if (run?.lengthMm === undefined) onWhere({ kind: "station", station: id });
    else onWhere({ kind: "run", run: id, mm: Math.round(run.lengthMm.value / 2) });
  };
  return (
    <div className="where">
      <SelectField
        label={label}
        value={keyOf(value)}
        none="not said yet"
        choices={choices}
        onChoice={take}
      />
      {value?.kind === "run" && <AlongRun value={value} onWhere={onWhere} />}
    </div>
  );
}

function AlongRun({
  value,
  onWhere,
}: {
  value: Extract<Where, { kind: "run" }>;
  onWhere: (where: Where) => void;
}): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const run = job.runs.find(({ id }) => id === value.run);
  const [slid, setSlid] = useState<number | null>(null);
  const [fault, setFault] = useState<string | null>(null);
  const id = useId();
  if (run?.lengthMm === undefined) return null;
  const wholeMm = run.lengthMm.value;
  const start = job.stations.find((one) => one.id === run.from)?.name ?? run.from;
  const put = (mm: number): void => {
    const isWithin = mm > 0 && mm < wholeMm;
    setSlid(null);
    setFault(
      isWithin
        ? null
        : `${printQuantity(mm, "mm")} is not on it: that run is ${printQuantity(wholeMm, "mm")} long. At its ends stand stations.`,
    );
    if (isWithin && mm !== value.mm) onWhere({ ...value, mm });
  };
  const letGo = (): void => {
    if (slid !== null) put(slid);
  };
  return (
    <>
      <label htmlFor={id} className="note">
        {printQuantity(slid ?? value.mm, "mm")} from {start}, of {printQuantity(wholeMm, "mm")}
      </label>
      <input
        id={id}
        type="range"
        min={5}
        max={Math.max(5, wholeMm - 5)}
        step={5}
        value={slid ?? value.mm}
        onChange={(event) => setSlid(Number(event.target.value))}
        onPointerUp={letGo}
        onKeyUp={letGo}
        onBlur={letGo}
      />
      <LengthField label={`or typed, from ${start}`} valueMm={value.mm} onLength={put} />
      {fault !== null && (
        <p className="note" role="alert">
          {fault}
        </p>
      )}
    </>
  );
}
