import type { Body } from "@copperwright/engine";
import type { ReactNode } from "react";
import { Slip } from "../../frame/Slip.tsx";
import { Neighbours } from "./Neighbours.tsx";
import { PinList } from "./PinList.tsx";
import { WorstFinding } from "./WorstFinding.tsx";

type BodySlipProps = {
  readonly body: Body;
  readonly at: { readonly x: number; readonly y: number } | undefined;
  readonly onClose: () => void;
};

/** A conducting mass: the places wires are fastened to it. */
export function BodySlip({ body, at, onClose }: BodySlipProps): ReactNode {
  const pins = [
    ...body.points.map(({ id, name }) => ({ ref: `${body.id}.${id}`, word: name ?? id })),
    { ref: `${body.id}.*`, word: "a new place" },
  ];
  return (
    <Slip title={body.name} label={`Body ${body.name}`} at={at} onClose={onClose}>
      <p className="note">
        {body.id}, {body.kind}
      </p>
      <WorstFinding ids={[body.id]} />
      <PinList pins={pins} />
      <Neighbours thing={{ kind: "body", id: body.id }} />
    </Slip>
  );
}
