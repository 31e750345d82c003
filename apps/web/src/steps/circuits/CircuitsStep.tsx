import { type ReactNode, useEffect, useState } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { layOnRule } from "../../frame/ruleMarks.ts";
import { noteStep, useBench } from "../../store/benchStore.ts";
import { CircuitList } from "./CircuitList.tsx";
import "../survey/survey.css";
import { useSlipPlace } from "../survey/useSlipPlace.ts";
import "./circuits.css";
import { ConnectBar } from "./ConnectBar.tsx";
import { DiagramSheet } from "./DiagramSheet.tsx";
import { Drawer, type DrawerName } from "./Drawer.tsx";
import { LeadBar } from "./LeadBar.tsx";
import { ThingSlip } from "./ThingSlip.tsx";
import { useIsNarrow } from "./useIsNarrow.ts";
import { useWalk } from "./useWalk.ts";

/** The wiring as a functional diagram, edited on the diagram itself. */
export default function CircuitsStep(): ReactNode {
  const [circuit, setCircuit] = useState<string | null>(null);
  const [drawer, setDrawer] = useState<DrawerName | null>(null);
  const slip = useSlipPlace();
  const walk = useWalk();
  useNote();
  useWayOnRule();
  return (
    <div className="circuits" onKeyDownCapture={walk}>
      <CircuitList circuit={circuit} onCircuit={setCircuit} drawer={drawer} onDrawer={setDrawer} />
      <div className="bars">
        <ConnectBar />
        <LeadBar />
      </div>
      <DiagramSheet circuit={circuit} onPick={slip.onTap} />
      {drawer !== null && <Drawer key={drawer} name={drawer} onClose={() => setDrawer(null)} />}
      <ThingSlip at={slip.at} />
    </div>
  );
}

function useNote(): void {
  const wireCount = useBench((bench) => bench.document!.job.wires.length);
  const result = useBench((bench) => bench.verdict.result);
  useEffect(() => {
    const open = result === null ? 1 : result.counts.stop + result.counts.mend;
    const box = wireCount === 0 ? "empty" : open > 0 ? "half" : "ticked";
    noteStep("circuits", { text: `${wireCount} wires`, box });
  }, [wireCount, result]);
}

/** The wire chosen, with its number over its way on the rule. */
function useWayOnRule(): void {
  const wire = useBench((bench) => (bench.chosen?.kind === "wire" ? bench.chosen.id : ""));
  // On a phone the rule has no room for words; the way itself is lit there too.
  const isNarrow = useIsNarrow();
  const { answer } = useAnswer("circuitsRule", wire);
  useEffect(() => {
    layOnRule(wire === "" || isNarrow ? [] : (answer ?? []));
    return () => layOnRule([]);
  }, [wire, answer, isNarrow]);
}
