import type { Wire } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { Slip } from "../../frame/Slip.tsx";
import { colourWords, WireSwatch } from "../../frame/WireSwatch.tsx";
import { choose, useBench } from "../../store/benchStore.ts";
import { circuitsEdit } from "./circuitsEdit.ts";
import { leadOver } from "./leading.ts";
import { Neighbours } from "./Neighbours.tsx";
import { chosenOwner } from "./thingKinds.ts";
import { WireFactRows } from "./WireFactRows.tsx";
import { WireVerb, type WireVerbName } from "./WireVerb.tsx";
import { WorstFinding } from "./WorstFinding.tsx";

type WireSlipProps = {
  readonly wire: Wire;
  readonly at: { readonly x: number; readonly y: number } | undefined;
  readonly onClose: () => void;
};

const VERBS: readonly { readonly name: WireVerbName; readonly word: string }[] = [
  { name: "split", word: "split" },
  { name: "join", word: "join" },
  { name: "colour", word: "colour" },
  { name: "size", word: "size" },
  { name: "move", word: "move an end" },
  { name: "route", word: "route" },
];

/** A wire: what it is, its worst finding with the change that would mend it, and what can be done to it. */
export function WireSlip({ wire, at, onClose }: WireSlipProps): ReactNode {
  const [verb, setVerb] = useState<WireVerbName | null>(null);
  const number = wire.number ?? wire.id;
  return (
    <Slip
      label={`Wire ${number}`}
      at={at}
      onClose={onClose}
      title={
        <>
          {number} <WireSwatch colour={wire.colour} /> <span>{colourWords(wire.colour)}</span>
        </>
      }
    >
      <p className="wire-ends">
        <End pin={wire.from} /> to <End pin={wire.to} />
        {wire.status !== "new" && <span className="note">, {wire.status}</span>}
      </p>
      <WireFactRows wire={wire.id} />
      <WorstFinding ids={[wire.id]} />
      <div className="slip-verbs">
        {VERBS.map(({ name, word }) => (
          <button
            key={name}
            type="button"
            className="act small"
            aria-expanded={verb === name}
            onClick={() => setVerb(verb === name ? null : name)}
          >
            {word}
          </button>
        ))}
        <button type="button" className="act small" onClick={() => leadOver(wire.id)}>
          lead over
        </button>
        <button
          type="button"
          className="act small"
          onClick={() => {
            void circuitsEdit(`remove wire ${number}`, { does: "remove-wire", wire: wire.id });
            onClose();
          }}
        >
          remove
        </button>
      </div>
      {verb !== null && <WireVerb name={verb} wire={wire} onDone={() => setVerb(null)} />}
      <Neighbours thing={{ kind: "wire", id: wire.id }} />
    </Slip>
  );
}

function End({ pin }: { pin: string }): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  return (
    <button type="button" className="figure-link" onClick={() => choose(chosenOwner(job, pin))}>
      {pin}
    </button>
  );
}
