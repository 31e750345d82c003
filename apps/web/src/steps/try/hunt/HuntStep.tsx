import { printNumber } from "@copperwright/engine/words";
import { type ReactNode, useEffect } from "react";
import { useBench } from "../../../store/benchStore.ts";
import { EngineSpeed } from "../EngineControl.tsx";
import { MeterBox } from "../MeterBox.tsx";
import { PinOffer } from "../PinOffer.tsx";
import { SideSheet } from "../SideSheet.tsx";
import { SwitchColumn } from "../SwitchColumn.tsx";
import { useTry } from "../tryStore.ts";
import { useLeadKeys } from "../useLeadKeys.ts";
import type { TryMachine } from "../worker/tryMachine.ts";
import type { LampView } from "../worker/tryView.ts";
import { GuessMaker } from "./GuessMaker.tsx";
import { fitFuse, readHunt } from "./huntApi.ts";
import { endHunt, type HuntRead, useHunt } from "./huntStore.ts";

/** A hunt: the learner has the machine, its switches and a meter. Every answer comes from the server, which alone knows the fault. */
export function HuntStep({ machine }: { machine: TryMachine }): ReactNode {
  const { exercise, read, trouble } = useHunt();
  const { set, engine, mode, red, black } = useTry();
  const ground = machine.hasEarth ? "earth" : (machine.owners[0]?.pins[0]?.ref ?? "earth");
  const asks = JSON.stringify([set, engine, mode, red, black]);
  useLeadKeys(machine);
  useEffect(() => void readHunt(ground), [asks, ground]);
  useEffect(() => {
    const word = exercise === null ? null : `hunting: ${exercise.title}`;
    useBench.setState({ onTheBench: word });
    return () => useBench.setState({ onTheBench: null });
  }, [exercise]);
  if (exercise === null) return null;
  const isPut = red !== null && black !== null;
  return (
    <div className="try">
      <div className="try-column">
        <Complaint title={exercise.title} read={read} limitMinutes={exercise.limitMinutes} />
        <SwitchColumn machine={machine} />
        <section className="try-engine" aria-label="Engine">
          <EngineSpeed />
        </section>
      </div>
      <div className="try-main">
        <div className="try-top">
          <div className="try-hand">
            <MeterBox
              machine={machine}
              reading={isPut ? (read?.reading ?? null) : null}
              well={null}
              refusal={null}
            />
          </div>
          <SideSheet view={null} lamps={useLamps(read)} before={null} />
        </div>
        <div className="try-trouble">
          {trouble !== null && <p className="try-note">{trouble}</p>}
        </div>
        <div className="try-lists">
          <Seen read={read} ground={ground} />
          <GuessMaker machine={machine} />
        </div>
      </div>
      <PinOffer machine={machine} />
    </div>
  );
}

type ComplaintProps = {
  readonly title: string;
  readonly read: HuntRead | null;
  readonly limitMinutes: number | null;
};

function Complaint({ title, read, limitMinutes }: ComplaintProps): ReactNode {
  const minutes = read === null ? 0 : read.minutes;
  const isOver = limitMinutes !== null && minutes > limitMinutes;
  return (
    <section className="try-complaint" aria-label="The complaint">
      <h2>{title}</h2>
      <p aria-live="polite">
        <b>{printNumber(minutes, 0)} min</b>
        {limitMinutes !== null && ` of ${limitMinutes}`}
        {isOver && ": time is up, go on if you like"}
      </p>
      <button type="button" className="act" onClick={endHunt}>
        leave the hunt
      </button>
    </section>
  );
}

/** Lamps as the server tells them, with the names and places this device knows from the plan. */
function useLamps(read: HuntRead | null): readonly LampView[] {
  const parts = useBench((bench) => bench.document?.job.parts);
  return (read?.lamps ?? []).map(({ part, filament, lit, relativeLight }) => {
    const known = parts?.find(({ id }) => id === part);
    return {
      part,
      filament,
      name: known?.name || part,
      station: known?.station ?? null,
      lightPercent: 100 * relativeLight,
      lightLowPercent: 100 * relativeLight,
      v: null,
      currentA: 0,
      powerW: 0,
      lit,
      expected: null,
      isAlternating: false,
      why: null,
    };
  });
}

function Seen({ read, ground }: { read: HuntRead | null; ground: string }): ReactNode {
  const pulled = useHunt((hunt) => hunt.pulled);
  const parts = useBench((bench) => bench.document?.job.parts);
  const nameOf = (id: string): string => parts?.find((part) => part.id === id)?.name || id;
  if (read === null) return <p className="note">asking the server</p>;
  const lit = read.lamps.filter((lamp) => lamp.lit);
  const works = read.loads.filter((load) => load.works);
  return (
    <section aria-label="What is to be seen and heard">
      <h2>Seen and heard</h2>
      <ul>
        {lit.map(({ part, filament, relativeLight }) => (
          <li key={`${part} ${filament}`} className="try-row">
            <span>{nameOf(part)}</span>
            <span className="note">{filament}</span>
            <span>{printNumber(100 * relativeLight, 0)} %</span>
          </li>
        ))}
        {works.map(({ part, element }) => (
          <li key={`${part} ${element}`} className="try-row">
            <span>{nameOf(part)}</span>
            <span className="note">{element}</span>
            <span>works</span>
          </li>
        ))}
      </ul>
      {lit.length + works.length === 0 && <p className="note">Nothing lights and nothing works.</p>}
      {pulled.map((fuse) => (
        <p key={fuse} className="try-note">
          {fuse} has gone{" "}
          <button type="button" className="act small" onClick={() => void fitFuse(fuse, ground)}>
            fit a new one
          </button>
        </p>
      ))}
    </section>
  );
}
