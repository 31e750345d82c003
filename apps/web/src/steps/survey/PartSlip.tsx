import type { Part } from "@copperwright/engine";
import type { ReactNode } from "react";
import { SelectField } from "../../entry/SelectField.tsx";
import { TextField } from "../../entry/TextField.tsx";
import { Slip } from "../../frame/Slip.tsx";
import { useBench } from "../../store/benchStore.ts";
import { editField } from "../../store/editField.ts";
import { goTo } from "../../store/route.ts";
import { PartFigures } from "./PartFigures.tsx";
import { STATUSES } from "./statuses.ts";
import { surveyEdit } from "./surveyEdit.ts";

type PartSlipProps = {
  readonly part: Part;
  readonly at: { readonly x: number; readonly y: number } | undefined;
  readonly onClose: () => void;
};

/** A part as it was found: name, place, condition and the figures read off it. */
export function PartSlip({ part, at, onClose }: PartSlipProps): ReactNode {
  const stations = useBench((bench) => bench.document!.job.stations);
  const set = (what: string, path: string, value: string | undefined): void =>
    editField(`${part.name || part.id}: ${what}`, { list: "parts", id: part.id }, [path], value);
  return (
    <Slip title={part.name || part.id} label={`Part ${part.name}`} at={at} onClose={onClose}>
      <p className="note">
        {part.id}, {part.kind}, terminals {part.pins.map(({ id }) => id).join(", ")}
      </p>
      <TextField label="name" value={part.name} onText={(name) => set("name", "name", name)} />
      <div className="slip-pair">
        <SelectField
          label="sits at"
          value={part.station ?? ""}
          none="not said"
          choices={stations.map(({ id, name }) => ({ value: id, word: name }))}
          onChoice={(station) => set("place", "station", station)}
        />
        <SelectField
          label="is"
          value={part.status ?? "keep"}
          choices={STATUSES}
          onChoice={(status) => set("what becomes of it", "status", status)}
        />
      </div>
      <PartFigures part={part.id} />
      <TextField
        label="condition, as found"
        value={part.note ?? ""}
        mayBeEmpty
        onText={(note) => set("condition", "note", note)}
      />
      <div className="slip-verbs">
        <button type="button" className="act" onClick={() => goTo("circuits")}>
          its wires, in Circuits
        </button>
        <button
          type="button"
          className="act"
          onClick={() => {
            void surveyEdit(`remove ${part.name || part.id}`, { does: "remove-part", id: part.id });
            onClose();
          }}
        >
          remove with its wires
        </button>
      </div>
    </Slip>
  );
}
