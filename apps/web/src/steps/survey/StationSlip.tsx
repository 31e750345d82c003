import type { Station } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { ask } from "../../engine/engineClient.ts";
import { SelectField } from "../../entry/SelectField.tsx";
import { TextField } from "../../entry/TextField.tsx";
import { Slip } from "../../frame/Slip.tsx";
import { choose, useBench } from "../../store/benchStore.ts";
import { editField } from "../../store/editField.ts";
import { edit } from "../../store/editing.ts";
import { PlaceFields } from "./PlaceFields.tsx";
import { SURROUNDINGS } from "./surroundings.ts";
import { surveyEdit } from "./surveyEdit.ts";

type StationSlipProps = {
  readonly station: Station;
  readonly at: { readonly x: number; readonly y: number } | undefined;
  readonly onClose: () => void;
  readonly onAddPart: () => void;
};

/** A station: its name, what is round it, what sits there, and runs to others. */
export function StationSlip({ station, at, onClose, onAddPart }: StationSlipProps): ReactNode {
  const parts = useBench((bench) => bench.document!.job.parts).filter(
    (part) => part.station === station.id,
  );
  const set = (path: string, value: string | undefined): void =>
    editField(`${station.name}: ${path}`, { list: "stations", id: station.id }, [path], value);
  return (
    <Slip title={station.name} label={`Station ${station.name}`} at={at} onClose={onClose}>
      <TextField label="name" value={station.name} onText={(name) => set("name", name)} />
      <SelectField
        label="round it"
        value={station.surroundings ?? ""}
        none="not said"
        choices={SURROUNDINGS}
        onChoice={(value) => set("surroundings", value === "" ? undefined : value)}
      />
      <PlaceFields station={station} />
      {parts.length > 0 && (
        <ul className="slip-list" aria-label="What sits here">
          {parts.map(({ id, name }) => (
            <li key={id}>
              <button
                type="button"
                className="figure-link"
                onClick={() => choose({ kind: "part", id })}
              >
                {name || id}
              </button>
            </li>
          ))}
        </ul>
      )}
      <RunFrom station={station} />
      <div className="slip-verbs">
        <button type="button" className="act filled" onClick={onAddPart}>
          add a part here
        </button>
        <button
          type="button"
          className="act"
          onClick={() => {
            void surveyEdit(`remove ${station.name}`, { does: "remove-station", id: station.id });
            onClose();
          }}
        >
          remove
        </button>
      </div>
    </Slip>
  );
}

/** A new run from this station; its length is measured on its own slip. */
function RunFrom({ station }: { station: Station }): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const [to, setTo] = useState("");
  const joined = new Set(
    job.runs.flatMap(({ from, to: end }) =>
      from === station.id ? [end] : end === station.id ? [from] : [],
    ),
  );
  const others = job.stations.filter(({ id }) => id !== station.id && !joined.has(id));
  if (others.length === 0) return null;
  const add = async (): Promise<void> => {
    const [id = "RUN1"] = await ask("surveyNewIds", [`${station.id}-${to}-`.slice(0, 20)]);
    const item = { id, from: station.id, to };
    if (await edit(`run to ${to}`, { op: "add", list: "runs", item })) choose({ kind: "run", id });
  };
  return (
    <div className="slip-pair">
      <SelectField
        label="a run to"
        value={to}
        none="no further one"
        choices={others.map(({ id, name }) => ({ value: id, word: name }))}
        onChoice={setTo}
      />
      {to !== "" && (
        <button type="button" className="act" onClick={() => void add()}>
          lay it
        </button>
      )}
    </div>
  );
}
