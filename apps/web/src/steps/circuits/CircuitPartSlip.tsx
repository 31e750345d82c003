import type { Part } from "@copperwright/engine";
import type { ReactNode } from "react";
import { Slip } from "../../frame/Slip.tsx";
import { useBench } from "../../store/benchStore.ts";
import { PartFigures } from "../survey/PartFigures.tsx";
import { ContactTableEditor } from "./ContactTableEditor.tsx";
import { circuitsEdit } from "./circuitsEdit.ts";
import { Neighbours } from "./Neighbours.tsx";
import { PinList } from "./PinList.tsx";
import { WorstFinding } from "./WorstFinding.tsx";

type CircuitPartSlipProps = {
  readonly part: Part;
  readonly at: { readonly x: number; readonly y: number } | undefined;
  readonly onClose: () => void;
};

/** A part on the diagram: its terminals with what lies on them, its figures, its contact table where it is a switch. */
export function CircuitPartSlip({ part, at, onClose }: CircuitPartSlipProps): ReactNode {
  const station = useBench(
    (bench) => bench.document!.job.stations.find(({ id }) => id === part.station)?.name ?? null,
  );
  const name = part.name || part.id;
  const pins = part.pins
    .filter(({ role }) => role !== "internal")
    .map((pin) => ({ ref: `${part.id}.${pin.id}`, word: pin.name ?? pin.id }));
  return (
    <Slip title={name} label={`Part ${name}`} at={at} onClose={onClose}>
      <p className="note">
        {part.id}, {part.kind}
        {station === null ? ", stands nowhere yet" : `, at ${station}`}
      </p>
      <WorstFinding ids={[part.id]} />
      {part.kind === "switch" && <ContactTableEditor part={part} />}
      <PinList pins={pins} />
      <PartFigures part={part.id} />
      <div className="slip-verbs">
        <button
          type="button"
          className="act small"
          onClick={() => {
            void circuitsEdit(`remove ${name} with its wires`, {
              does: "remove-part",
              id: part.id,
            });
            onClose();
          }}
        >
          remove with its wires
        </button>
      </div>
      <Neighbours thing={{ kind: "part", id: part.id }} />
    </Slip>
  );
}
