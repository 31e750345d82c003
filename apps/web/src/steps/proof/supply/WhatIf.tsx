import type { LoadChange } from "@copperwright/engine";
import { printQuantity } from "@copperwright/engine/words";
import { type ReactNode, useState } from "react";
import { askLong, front } from "../../../engine/engineClient.ts";
import { QuantityField } from "../../../entry/QuantityField.tsx";
import { SelectField } from "../../../entry/SelectField.tsx";
import { useBench } from "../../../store/benchStore.ts";
import { edit } from "../../../store/editing.ts";
import { goTo } from "../../../store/route.ts";
import { think, unthink, useSupply } from "./supplyStore.ts";
import { SUPPLY_WORKER } from "./useSupplyAsking.ts";

/** Ready thoughts; the watts are for the hand to correct, as its maker states them. */
const ADDED = [
  { name: "heated grips", powerW: 30 },
  { name: "heated jacket", powerW: 65 },
  { name: "charging socket", powerW: 15 },
] as const;
const MOST_W = 500;
const START_LED_W = 8;

/** What if: watts added, or a lamp swapped for LED. The answer stands in the plots at once; the job is not touched until it is applied. */
export function WhatIf(): ReactNode {
  const changes = useSupply((supply) => supply.changes);
  const isStale = useSupply((supply) => supply.isStale);
  return (
    <section className="supply-whatif" aria-label="What if">
      <h2>What if</h2>
      <div className="supply-adds" role="group" aria-label="Add watts across the battery">
        {ADDED.map(({ name, powerW }) => (
          <button
            key={name}
            type="button"
            className="act"
            onClick={() => think({ kind: "add", name: numbered(name, changes), powerW })}
          >
            add {name}
          </button>
        ))}
        <LampSwap />
      </div>
      {changes.length > 0 && (
        <ul className="supply-thoughts" aria-label="Thought of">
          {changes.map((change) => (
            <Thought key={keyOf(change)} change={change} />
          ))}
        </ul>
      )}
      {changes.length > 0 && <Apply />}
      <p className="note" aria-live="polite">
        {changes.length === 0
          ? "Tried on a copy: the plots answer at once, the job stays as it is."
          : isStale
            ? "being reckoned"
            : "Shown as if it were so; dashed lines and “job as it is” are the job unchanged."}
      </p>
    </section>
  );
}

const keyOf = (change: LoadChange): string =>
  change.kind === "led" ? `led ${change.part}` : `add ${change.name}`;

function numbered(name: string, changes: readonly LoadChange[]): string {
  const taken = new Set(changes.map(keyOf));
  for (let n = 1; ; n++) {
    const own = n === 1 ? name : `${name} ${n}`;
    if (!taken.has(`add ${own}`)) return own;
  }
}

function LampSwap(): ReactNode {
  const parts = useBench((bench) => bench.document!.job.parts);
  const changes = useSupply((supply) => supply.changes);
  const lamps = parts.flatMap((part) =>
    part.kind === "lamp" &&
    part.source !== "led" &&
    part.status !== "remove" &&
    !changes.some((one) => one.kind === "led" && one.part === part.id)
      ? [{ value: part.id, word: part.name || part.id }]
      : [],
  );
  if (lamps.length === 0) return null;
  return (
    <SelectField
      label="swap a lamp for LED"
      value=""
      none="which lamp"
      choices={lamps}
      onChoice={(part) => part !== "" && think({ kind: "led", part, powerW: START_LED_W })}
    />
  );
}

function Thought({ change }: { change: LoadChange }): ReactNode {
  const parts = useBench((bench) => bench.document!.job.parts);
  const name =
    change.kind === "add"
      ? change.name
      : `${parts.find(({ id }) => id === change.part)?.name ?? change.part} as LED`;
  const replace = (powerW: number): void => {
    useSupply.setState(({ changes }) => ({
      changes: changes.map((one) => (one === change ? { ...change, powerW } : one)),
    }));
  };
  return (
    <li>
      <QuantityField
        label={`${name}, watts`}
        unit="W"
        value={change.powerW}
        least={0.1}
        most={MOST_W}
        onValue={replace}
      />
      <button
        type="button"
        className="act small"
        aria-label={`Let go of ${name}`}
        onClick={() => unthink(change)}
      >
        let go
      </button>
    </li>
  );
}

/** Lamps are swapped in the job as one act; watts added need their own circuit, wire and fuse. */
function Apply(): ReactNode {
  const changes = useSupply((supply) => supply.changes);
  const [isBusy, setBusy] = useState(false);
  const leds = changes.filter(({ kind }) => kind === "led");
  const addedW = changes.reduce((sum, one) => sum + (one.kind === "add" ? one.powerW : 0), 0);
  const swap = async (): Promise<void> => {
    setBusy(true);
    const text = await front.text();
    const act = await askLong(text, "supplyLedAct", { changes: leds }, undefined, SUPPLY_WORKER);
    const isDone = await edit(`swap ${leds.length === 1 ? "a lamp" : "lamps"} for LED`, act);
    if (isDone) useSupply.setState({ changes: changes.filter(({ kind }) => kind !== "led") });
    setBusy(false);
  };
  return (
    <div className="supply-adds">
      {leds.length > 0 && (
        <button type="button" className="act" disabled={isBusy} onClick={() => void swap()}>
          swap {leds.length === 1 ? "the lamp" : `${leds.length} lamps`} in the job
        </button>
      )}
      {addedW > 0 && (
        <button type="button" className="act" onClick={() => goTo("circuits")}>
          give {printQuantity(addedW, "W")} a circuit of its own
        </button>
      )}
    </div>
  );
}
