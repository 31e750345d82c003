import { lazy, type ReactNode, Suspense, useEffect } from "react";
import { type StepName, useBench } from "../store/benchStore.ts";
import { Card } from "./Card.tsx";
import { FaultFence } from "./FaultFence.tsx";
import { Finder } from "./Finder.tsx";
import "./frame.css";
import { KeysSlip } from "./KeysSlip.tsx";
import { PairPage } from "./PairPage.tsx";
import { PrintedHead } from "./PrintedHead.tsx";
import { Rule } from "./Rule.tsx";
import { SumLine } from "./SumLine.tsx";
import { usePalette } from "./usePalette.ts";

const SHEETS: Readonly<Record<StepName, React.LazyExoticComponent<() => ReactNode>>> = {
  jobs: lazy(() => import("../steps/jobs/JobsStep.tsx")),
  survey: lazy(() => import("../steps/survey/SurveyStep.tsx")),
  circuits: lazy(() => import("../steps/circuits/CircuitsStep.tsx")),
  try: lazy(() => import("../steps/try/TryStep.tsx")),
  proof: lazy(() => import("../steps/proof/ProofStep.tsx")),
  loom: lazy(() => import("../steps/loom/LoomStep.tsx")),
  loomBoard: lazy(() => import("../steps/loomBoard/LoomBoardStep.tsx")),
  parts: lazy(() => import("../steps/parts/PartsStep.tsx")),
  build: lazy(() => import("../steps/build/BuildStep.tsx")),
  test: lazy(() => import("../steps/test/TestStep.tsx")),
  papers: lazy(() => import("../steps/papers/PapersStep.tsx")),
};

/** The five objects and nothing else: rule above, sheet in the middle, card at the right with the stamp at its foot, sum line below. */
export function Bench({ locked }: { locked: string | null }): ReactNode {
  usePalette();
  const step = useBench((bench) => bench.step);
  const hasJob = useBench((bench) => bench.document !== null);
  const name = useBench((bench) => bench.document?.job.name ?? null);
  useEffect(() => {
    document.title = name === null ? "Copperwright" : `${name} · Copperwright`;
  }, [name]);
  if (locked !== null) return <PairPage why={locked} />;
  const Sheet = SHEETS[step];
  const isWall = step === "jobs";
  return (
    <div className={isWall ? "frame wall" : "frame"} data-step={step}>
      {!isWall && hasJob && <Rule />}
      <main className="sheet" id="sheet" tabIndex={-1}>
        {!isWall && step !== "papers" && <PrintedHead />}
        <FaultFence key={step}>
          <Suspense fallback={<p className="waiting note">opening</p>}>
            {isWall || hasJob ? <Sheet /> : <p className="waiting note">opening the job</p>}
          </Suspense>
        </FaultFence>
      </main>
      <Card />
      <SumLine />
      <Finder />
      <KeysSlip />
    </div>
  );
}
