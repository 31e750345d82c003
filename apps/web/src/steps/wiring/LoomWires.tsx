import type { Wire } from "@copperwright/engine";
import type { ReactNode } from "react";
import { ask } from "../../engine/engineClient.ts";
import { SelectField } from "../../entry/SelectField.tsx";
import { useBench } from "../../store/benchStore.ts";
import { WireTicks } from "./WireTicks.tsx";

type LoomWiresProps = {
  readonly wires: readonly Wire[];
  readonly ticked: ReadonlySet<string>;
  readonly onTicked: (ticked: ReadonlySet<string>) => void;
};

/** Wires of a loom, ticked one by one or a whole run at once. */
export function LoomWires({ wires, ticked, onTicked }: LoomWiresProps): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const nameOf = (id: string): string => job.stations.find((one) => one.id === id)?.name ?? id;
  const tickRun = async (run: string): Promise<void> => {
    if (run === "") return;
    const inRun = await ask("wiringInRun", run);
    onTicked(new Set([...ticked, ...inRun]));
  };
  return (
    <>
      {job.runs.length > 0 && (
        <SelectField
          label="tick every wire that lies in"
          value=""
          none="choose a run"
          choices={job.runs.map(({ id, from, to }) => ({
            value: id,
            word: `${nameOf(from)} to ${nameOf(to)}`,
          }))}
          onChoice={(run) => void tickRun(run)}
        />
      )}
      <WireTicks label="wires in it" wires={wires} ticked={ticked} onTicked={onTicked} />
    </>
  );
}
