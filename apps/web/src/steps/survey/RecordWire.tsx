import { type ReactNode, useState } from "react";
import { ColourField } from "../../entry/ColourField.tsx";
import { PinField } from "../../entry/PinField.tsx";
import { SelectField } from "../../entry/SelectField.tsx";
import { WireNameField } from "../../entry/WireNameField.tsx";
import { useBench } from "../../store/benchStore.ts";
import { surveyEdit } from "./surveyEdit.ts";

interface Draft {
  readonly from: string;
  readonly to: string;
  readonly colour: { readonly main: string; readonly tracer?: string | undefined } | null;
  readonly make: string;
  readonly circuit: string;
}

const EMPTY: Draft = { from: "", to: "", colour: null, make: "", circuit: "" };

/** A wire found on the machine, written down as it lies. */
export function RecordWire(): ReactNode {
  const circuits = useBench((bench) => bench.document!.job.circuits);
  const [draft, setDraft] = useState<Draft | null>(null);
  if (draft === null) {
    return (
      <button type="button" className="act" onClick={() => setDraft(EMPTY)}>
        write down a wire found
      </button>
    );
  }
  const { from, to, colour, make, circuit } = draft;
  const isWhole = from !== "" && to !== "" && from !== to && circuit !== "";
  const put = async (): Promise<void> => {
    const wire = {
      from,
      to,
      circuit,
      status: "found" as const,
      ...(colour === null ? {} : { colour }),
      ...(make === "" ? {} : { make }),
    };
    if (await surveyEdit(`wire found, ${from} to ${to}`, { does: "wire", wire })) setDraft(null);
  };
  return (
    <div className="record-wire">
      <PinField label="one end" value={from} onPin={(pin) => setDraft({ ...draft, from: pin })} />
      <PinField label="other end" value={to} onPin={(pin) => setDraft({ ...draft, to: pin })} />
      <SelectField
        label="belongs to"
        value={circuit}
        none="circuit?"
        choices={circuits.map(({ id, name }) => ({ value: id, word: name }))}
        onChoice={(id) => setDraft({ ...draft, circuit: id })}
      />
      <WireNameField
        label="size, as counted"
        value={make}
        onMake={(id) => setDraft({ ...draft, make: id })}
      />
      <ColourField value={colour} onColour={(next) => setDraft({ ...draft, colour: next })} />
      <div className="slip-verbs">
        <button type="button" className="act filled" disabled={!isWhole} onClick={() => void put()}>
          write it down
        </button>
        <button type="button" className="act" onClick={() => setDraft(null)}>
          leave it
        </button>
      </div>
    </div>
  );
}
