import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { showSum } from "../../store/benchStore.ts";
import { Choice } from "./EngineControl.tsx";
import { type Lead, putLead, useTry } from "./tryStore.ts";
import type { TryMachine } from "./worker/tryMachine.ts";
import type { ProbeAnswer } from "./worker/tryProbe.ts";

type Reading = Extract<ProbeAnswer, { ok: true }>["reading"];

const MODES = ["volts", "ohms"] as const;
const WHY: Readonly<Record<NonNullable<Reading["why"]>, string>> = {
  floating: "floats",
  "two alternating pins": "not told",
  "not solved": "no figure",
  open: "open",
};
const NOTES: Readonly<Record<NonNullable<Reading["why"]>, string>> = {
  floating: "one lead is on something that hangs in the air: a real meter drifts about nought",
  "two alternating pins":
    "both leads are on alternating current; only sizes against earth are known",
  "not solved": "this state does not settle",
  open: "no way through: more than 20 MΩ",
};

type MeterBoxProps = {
  readonly machine: TryMachine;
  readonly reading: Reading | null;
  readonly well: Reading | null;
  readonly refusal: string | null;
};

/** A meter as it lies on the bench: knob, figure with the sign a real one shows, two leads. */
export function MeterBox({ machine, reading, well, refusal }: MeterBoxProps): ReactNode {
  const { mode, red, black } = useTry();
  const isPut = red !== null && black !== null;
  return (
    <section className="try-meter" aria-label="Meter">
      <Choice
        label="What the meter is turned to"
        words={MODES}
        now={mode}
        said={{ ohms: "ohms, battery off" }}
        onWord={(one) => useTry.setState({ mode: one })}
      />
      <p className="try-figure" aria-live="polite">
        {reading === null ? (
          <span className="note">{isPut ? "reading" : "put both leads down"}</span>
        ) : (
          <button
            type="button"
            className="figure-link"
            onClick={() => explain(reading, red!, black!)}
          >
            {readingText(reading)}
          </button>
        )}
      </p>
      <p className="note">
        {refusal ??
          (reading?.why ? NOTES[reading.why] : null) ??
          (well === null ? "\u00a0" : `${readingText(well)} when well`)}
      </p>
      <LeadPicker lead="red" machine={machine} />
      <LeadPicker lead="black" machine={machine} />
    </section>
  );
}

export function readingText({ value, unit, why, isAlternating }: Reading): string {
  if (value === null) return why === null ? "" : WHY[why];
  const figure =
    unit === "ohm" && value >= 1e5
      ? `${printQuantity(value / 1e6, "Mohm")}`
      : printQuantity(value, unit);
  return isAlternating ? `${figure} AC` : figure;
}

function explain(reading: Reading, red: string, black: string): void {
  const isVolts = reading.mode === "volts";
  showSum({
    name: `${red} to ${black}`,
    result: readingText(reading),
    equation: isVolts ? "volts at red − volts at black" : "test volts ÷ test current",
    inputs: [
      { text: `red on ${red}`, from: "where you put it", goTo: { kind: "pin", id: red } },
      { text: `black on ${black}`, from: "where you put it", goTo: { kind: "pin", id: black } },
    ],
    note: isVolts
      ? "the whole network of this state solved, all volts to the battery's earthed post"
      : "battery and sources off, every relay let go; 0.2 V behind 200 Ω, our own meter",
  });
}

/** Where a lead stands, and every place it can be put, front to rear. */
function LeadPicker({ lead, machine }: { lead: Lead; machine: TryMachine }): ReactNode {
  const pin = useTry((bench) => bench[lead]);
  return (
    <label className={`try-lead-picker ${lead}`}>
      <span className="note">
        {lead} <kbd>{lead[0]}</kbd>
      </span>
      <select value={pin ?? ""} onChange={(event) => putLead(lead, event.target.value)}>
        <option value="" disabled>
          not put down
        </option>
        {machine.hasEarth && <option value="earth">earth, the frame</option>}
        {machine.owners.map(({ owner, label, pins }) => (
          <optgroup key={owner} label={`${label} (${owner})`}>
            {pins.map(({ ref, label: word }) => (
              <option key={ref} value={ref}>
                {owner} {word}
              </option>
            ))}
          </optgroup>
        ))}
      </select>
    </label>
  );
}
