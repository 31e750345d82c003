import type { ReactNode } from "react";
import { SelectField } from "../../entry/SelectField.tsx";
import { TextField } from "../../entry/TextField.tsx";
import { Slip } from "../../frame/Slip.tsx";
import { useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import { circuitsEdit } from "./circuitsEdit.ts";
import { Neighbours } from "./Neighbours.tsx";
import { PinList } from "./PinList.tsx";
import { WorstFinding } from "./WorstFinding.tsx";

type MeetingSlipProps = {
  readonly list: "joints" | "connectors";
  readonly id: string;
  readonly name: string;
  readonly thing: {
    readonly station?: string | undefined;
    readonly kind: string;
    readonly ways?: readonly string[];
    readonly cavities?: readonly string[];
  };
  readonly at: { readonly x: number; readonly y: number } | undefined;
  readonly onClose: () => void;
};

/** A joint or a connector: what meets there, where it is, and taking it out. */
export function MeetingSlip({ list, id, name, thing, at, onClose }: MeetingSlipProps): ReactNode {
  const stations = useBench((bench) => bench.document!.job.stations);
  const word = list === "joints" ? "joint" : "connector";
  const set = (what: string, path: string, value: string): void =>
    void edit(`${word} ${name}: ${what}`, {
      op: "set",
      list,
      id,
      path: [path],
      ...(value === "" ? {} : { value }),
    });
  const pins =
    list === "joints"
      ? [
          ...(thing.ways ?? []).map((way) => ({ ref: `${id}.${way}`, word: `way ${way}` })),
          { ref: `${id}.*`, word: "a free way" },
        ]
      : (thing.cavities ?? []).flatMap((cavity) => [
          { ref: `${id}.${cavity}p`, word: `${cavity}, plug` },
          { ref: `${id}.${cavity}s`, word: `${cavity}, socket` },
        ]);
  return (
    <Slip title={name} label={`${word} ${name}`} at={at} onClose={onClose}>
      <p className="note">
        {id}, {word}, {thing.kind}
      </p>
      <WorstFinding ids={[id]} />
      <TextField label="name" value={name} onText={(text) => set("name", "name", text)} />
      <SelectField
        label="sits at"
        value={thing.station ?? ""}
        none="along a run, or not said"
        choices={stations.map((one) => ({ value: one.id, word: one.name }))}
        onChoice={(station) => set("place", "station", station)}
      />
      <PinList pins={pins} />
      <div className="slip-verbs">
        <button
          type="button"
          className="act small"
          onClick={() => {
            void circuitsEdit(`take ${word} ${name} out`, { does: "remove", list, id });
            onClose();
          }}
        >
          take it out
        </button>
      </div>
      <p className="note">
        Where two wires meet they become one again; more than two go with the {word}.
      </p>
      <Neighbours thing={{ kind: word, id }} />
    </Slip>
  );
}
