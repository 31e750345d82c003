import type { Body } from "@copperwright/engine";
import type { ReactNode } from "react";
import { TextField } from "../../entry/TextField.tsx";
import { Slip } from "../../frame/Slip.tsx";
import { useBench } from "../../store/benchStore.ts";
import { editField } from "../../store/editField.ts";
import { bondKinds } from "../wiring/bondKinds.ts";
import { takeAway } from "../wiring/wiringEdit.ts";
import { Neighbours } from "./Neighbours.tsx";
import { PinList } from "./PinList.tsx";
import { WorstFinding } from "./WorstFinding.tsx";

type BodySlipProps = {
  readonly body: Body;
  readonly at: { readonly x: number; readonly y: number } | undefined;
  readonly onClose: () => void;
};

/** A conducting mass: the places wires are fastened to it, and what bonds it to others. */
export function BodySlip({ body, at, onClose }: BodySlipProps): ReactNode {
  const { id, name, kind } = body;
  const pins = [
    ...body.points.map((point) => ({ ref: `${id}.${point.id}`, word: point.name ?? point.id })),
    { ref: `${id}.*`, word: "a new place" },
  ];
  return (
    <Slip title={name} label={`Body ${name}`} at={at} onClose={onClose}>
      <p className="note">
        {id}, {kind}
      </p>
      <WorstFinding ids={[id]} />
      <TextField
        label="name"
        value={name}
        onText={(value) => editField(`${name}: name`, { list: "bodies", id }, ["name"], value)}
      />
      <PinList pins={pins} />
      <BondsOf body={id} />
      <div className="slip-verbs">
        <button
          type="button"
          className="act small"
          onClick={async () => {
            if (await takeAway(`remove ${name}`, "bodies", id)) onClose();
          }}
        >
          remove
        </button>
      </div>
      <Neighbours thing={{ kind: "body", id }} />
    </Slip>
  );
}

function BondsOf({ body }: { body: string }): ReactNode {
  const bonds = useBench((bench) => bench.document!.job.bonds).filter(({ from, to }) =>
    [from, to].some((pin) => pin.startsWith(`${body}.`)),
  );
  if (bonds.length === 0) return <p className="note">Bonded to nothing: see earths.</p>;
  return (
    <ul className="slip-list" aria-label="Bonds">
      {bonds.map(({ id, from, to, kind }) => (
        <li key={id}>
          {bondKinds.find(({ value }) => value === kind)?.word}{" "}
          <span className="note">
            {from} to {to}
          </span>
        </li>
      ))}
    </ul>
  );
}
