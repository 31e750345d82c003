import { type ReactNode, useEffect, useMemo, useRef } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { layOnRule } from "../../frame/ruleMarks.ts";
import { noteStep, useBench } from "../../store/benchStore.ts";
import { EngineControl } from "./EngineControl.tsx";
import { Exercises } from "./Exercises.tsx";
import { FaultMaker } from "./FaultMaker.tsx";
import { FlashKey } from "./FlashKey.tsx";
import { heatAt } from "./heatAt.ts";
import { HuntStep } from "./hunt/HuntStep.tsx";
import { endHunt, useHunt } from "./hunt/huntStore.ts";
import { MeterBox } from "./MeterBox.tsx";
import { PinOffer } from "./PinOffer.tsx";
import { runText } from "./RunValues.tsx";
import { SideSheet } from "./SideSheet.tsx";
import { ShownChoice, StateLists } from "./StateLists.tsx";
import { SwitchColumn } from "./SwitchColumn.tsx";
import { TimeAxis } from "./TimeAxis.tsx";
import "./try.css";
import { benchFor, stageAt, stampBench, useTry } from "./tryStore.ts";
import { useFlash } from "./useFlash.ts";
import { useLeadKeys } from "./useLeadKeys.ts";
import type { TryMachine } from "./worker/tryMachine.ts";
import type { StateAnswer } from "./worker/tryState.ts";
import type { TryView } from "./worker/tryView.ts";

/** The bench with the machine on it: worked by its switches, measured, broken and watched. */
export default function TryStep(): ReactNode {
  const key = useBench((bench) => bench.document?.key ?? "");
  const hunted = useHunt((hunt) => hunt.exercise);
  const { answer: machine } = useAnswer("tryMachine", undefined);
  useEffect(() => {
    benchFor(key);
    if (useHunt.getState().exercise?.key !== key) endHunt();
  }, [key]);
  if (machine === null) return <p className="waiting note">laying the machine out</p>;
  return hunted === null ? <Experiment machine={machine} /> : <HuntStep machine={machine} />;
}

function Experiment({ machine }: { machine: TryMachine }): ReactNode {
  const { set, engine, battery, aged, faults, shows, isFlashing, atS, mode, red, black } = useTry();
  const setting = { set, engine, battery, aged, faults };
  const { answer, fault } = useAnswer("tryState", { ...setting, shows });
  const beat = useFlash(isFlashing && hasDark(answer), machine.flashesPerMinute);
  useLeadKeys(machine);
  useEffect(() => stampBench(faults), [faults]);
  const stage = answer?.ok ? answer.stages[stageAt(answer.stages, atS)]! : null;
  const story = answer?.ok ? answer.story : null;
  const warm = (one: TryView): TryView => heatAt(one, story, atS ?? story?.fromS ?? 0);
  const now = stage === null ? null : ((beat === "off" ? stage.dark : null) ?? stage.lit);
  const view = now === null ? null : warm(now);
  const isPut = red !== null && black !== null;
  const flash = stage?.dark != null ? beat : "on";
  const { answer: probe } = useAnswer("tryProbe", {
    setting,
    gone: isPut ? (stage?.gone ?? []) : [],
    flash: isPut ? flash : "on",
    red: isPut ? red : "earth",
    black: isPut ? black : "earth",
    mode,
  });
  useRuleValues(useMemo(() => (stage === null ? null : warm(stage.lit)), [stage, story, atS]));
  useStepNote(faults.length);
  useLookUp(faults.length);
  return (
    <div className="try">
      <div className="try-column">
        <ColumnWays />
        <SwitchColumn machine={machine} />
        {machine.hasFlasher && (
          <FlashKey isOn={hasDark(answer)} perMinute={machine.flashesPerMinute} />
        )}
        <EngineControl />
        <FaultMaker machine={machine} />
        <Exercises />
      </div>
      <div className="try-main">
        <div className="try-top">
          <div className="try-hand">
            <MeterBox
              machine={machine}
              reading={isPut && probe?.ok ? probe.reading : null}
              well={isPut && probe?.ok ? probe.well : null}
              refusal={
                isPut && probe !== null && !probe.ok ? (probe.refusals[0]?.message ?? null) : null
              }
            />
            <ShownChoice />
          </div>
          <SideSheet
            view={view}
            lamps={view?.lamps ?? []}
            named={stage?.lit.lamps}
            before={answer?.ok ? (answer.well?.lamps ?? null) : null}
          />
        </div>
        <Trouble fault={fault} answer={answer} />
        {story !== null && <TimeAxis story={story} labelOf={labelOf(view)} />}
        {view !== null && <StateLists view={view} machine={machine} />}
      </div>
      <PinOffer machine={machine} />
    </div>
  );
}

const WAYS = [
  ["try-switches", "switches"],
  ["try-engine", "engine"],
  ["try-break", "break"],
  ["try-exercises", "exercises"],
] as const;

/** Short ways down a long column; they move the eye, not the machine. */
function ColumnWays(): ReactNode {
  return (
    <nav className="try-ways" aria-label="In this column">
      {WAYS.map(([place, word]) => (
        <button
          key={place}
          type="button"
          className="figure-link"
          onClick={() => document.querySelector(`.${place}`)?.scrollIntoView({ block: "start" })}
        >
          {word}
        </button>
      ))}
    </nav>
  );
}

function Trouble({
  fault,
  answer,
}: {
  fault: string | null;
  answer: StateAnswer | null;
}): ReactNode {
  const refused = answer !== null && !answer.ok ? answer.refusals : [];
  return (
    <div className="try-trouble">
      {fault !== null && <p className="try-note">This state could not be solved: {fault}</p>}
      {refused.map(({ message, remedy }) => (
        <p key={message} className="try-note">
          {message} {remedy}
        </p>
      ))}
    </div>
  );
}

const hasDark = (answer: StateAnswer | null): boolean =>
  answer?.ok === true && answer.stages.some(({ dark }) => dark !== null);

function labelOf(view: TryView | null): (wire: string) => string {
  const labels = new Map(view?.wires.map(({ wire, label }) => [wire, label]));
  return (wire) => labels.get(wire) ?? wire;
}

/** Lays the figure of every main run on the rule, and takes it away on leaving. */
function useRuleValues(view: TryView | null): void {
  const shows = useTry((bench) => bench.shows);
  const { answer: rule } = useAnswer("rule", undefined);
  useEffect(() => {
    if (view === null || rule === null) return;
    layOnRule(
      rule.runs.flatMap(({ id, fromMm, toMm, isBranch }) => {
        const run = view.runs.find((one) => one.run === id);
        const text = run === undefined ? null : runText(run, shows);
        const wideEnough = Math.abs(toMm - fromMm) > (rule.mostMm - rule.leastMm) / 16;
        if (isBranch || text === null || !wideEnough) return [];
        return [{ fromMm, toMm, ...(isRoomy() && { text }), tone: "copper" as const }];
      }),
    );
    return () => layOnRule([]);
  }, [view, rule, shows]);
}

const isRoomy = (): boolean => innerWidth >= 720;

/** On a phone the machine is above what breaks it: a fault just set is shown, not scrolled for. */
function useLookUp(faultCount: number): void {
  const before = useRef(faultCount);
  useEffect(() => {
    if (faultCount > before.current && !isRoomy()) {
      document.querySelector(".try-side")?.scrollIntoView({ block: "start" });
    }
    before.current = faultCount;
  }, [faultCount]);
}

function useStepNote(faultCount: number): void {
  useEffect(() => {
    noteStep("try", {
      text: faultCount === 0 ? "" : `${faultCount} set`,
      box: faultCount === 0 ? "empty" : "half",
    });
  }, [faultCount]);
}
