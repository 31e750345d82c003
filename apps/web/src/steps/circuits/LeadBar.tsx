import { type ReactNode, useEffect, useRef } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { PinField } from "../../entry/PinField.tsx";
import { ConsequenceLine } from "../../frame/ConsequenceLine.tsx";
import { useBench } from "../../store/benchStore.ts";
import { wiringEdit } from "../wiring/wiringEdit.ts";
import { leadOver, stopLeading, useLeading } from "./leading.ts";
import { pinWords } from "./thingKinds.ts";

/** A wire led over a place between its ends: where, what comes of it, and then done. */
export function LeadBar(): ReactNode {
  const { wire: id, pin } = useLeading();
  const wire = useBench((bench) => bench.document!.job.wires.find((one) => one.id === id));
  const bar = useRef<HTMLElement>(null);
  useEffect(() => stopLeading, []);
  useEffect(() => {
    if (id !== null) bar.current?.scrollIntoView({ block: "nearest" });
  }, [id]);
  if (wire === undefined) return null;
  const number = wire.number ?? wire.id;
  const put = async (): Promise<void> => {
    const change = { does: "through" as const, wire: wire.id, pin };
    const done = await wiringEdit(`lead wire ${number} over ${pinWords(pin)}`, change);
    if (done.isDone) stopLeading();
  };
  return (
    <section ref={bar} className="connect-bar" aria-label={`Lead wire ${number} over`}>
      <p aria-live="polite">
        <b>Wire {number}</b> is cut in two and both pieces end{" "}
        {pin === "" ? "on a terminal, joint or connector: which?" : `on ${pinWords(pin)}.`}
      </p>
      <div className="connect-fields">
        <PinField label="led over" value={pin} onPin={(next) => leadOver(wire.id, next)} />
        {pin !== "" && <LeadOutcome key={pin} wire={wire.id} pin={pin} />}
        <button
          type="button"
          className="act filled"
          disabled={pin === ""}
          onClick={() => void put()}
        >
          lead it over there
        </button>
        <button type="button" className="act" onClick={stopLeading}>
          leave it
        </button>
      </div>
    </section>
  );
}

function LeadOutcome({ wire, pin }: { wire: string; pin: string }): ReactNode {
  const { answer } = useAnswer("wiringMade", { does: "through", wire, pin });
  return <ConsequenceLine operation={answer?.operation ?? null} />;
}
