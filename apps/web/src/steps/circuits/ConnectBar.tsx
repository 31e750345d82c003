import { type ReactNode, useState } from "react";
import { ColourField } from "../../entry/ColourField.tsx";
import { PinField } from "../../entry/PinField.tsx";
import { SelectField } from "../../entry/SelectField.tsx";
import { WireNameField } from "../../entry/WireNameField.tsx";
import { useBench } from "../../store/benchStore.ts";
import { circuitsEdit } from "./circuitsEdit.ts";
import { stopConnecting, useConnecting } from "./connecting.ts";
import { likelyCircuit, wiresNear } from "./likelyCircuit.ts";
import { pinWords } from "./thingKinds.ts";

/** A wire on its way: one end taken, the other to be taken; then what it is to be. */
export function ConnectBar(): ReactNode {
  const { from, to } = useConnecting();
  if (from === null) return null;
  return (
    <section className="connect-bar" aria-label="A new wire">
      <p aria-live="polite">
        <b>From {pinWords(from)}.</b>{" "}
        {to === null ? "Choose the other terminal, on its slip or here." : `To ${pinWords(to)}.`}
      </p>
      <div className="connect-fields">
        {to === null && (
          <PinField
            label="other terminal"
            value=""
            onPin={(pin) => useConnecting.setState({ from, to: pin })}
          />
        )}
        {to !== null && <WireForm key={`${from} ${to}`} from={from} to={to} />}
        <button type="button" className="act" onClick={stopConnecting}>
          leave it
        </button>
      </div>
    </section>
  );
}

/** Circuit, colour and size of a new wire; the size may be left to the engine. */
function WireForm({ from, to }: { from: string; to: string }): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const [circuit, setCircuit] = useState(() => likelyCircuit(job, from, to) ?? "");
  const [loom, setLoom] = useState(() => wiresNear(job, from, to)[0]?.loom ?? "");
  const [colour, setColour] = useState<Parameters<typeof ColourField>[0]["value"]>(null);
  const [make, setMake] = useState("");
  const connect = async (): Promise<void> => {
    const wire = {
      from,
      to,
      circuit,
      ...(loom === "" ? {} : { loom }),
      ...(colour === null ? {} : { colour }),
      ...(make === "" ? {} : { make }),
    };
    if (
      await circuitsEdit(`connect ${pinWords(from)} to ${pinWords(to)}`, { does: "connect", wire })
    )
      stopConnecting();
  };
  return (
    <>
      <SelectField
        label="belongs to"
        value={circuit}
        none="which circuit?"
        choices={job.circuits.map(({ id, name }) => ({ value: id, word: name }))}
        onChoice={setCircuit}
      />
      <SelectField
        label="lies in"
        value={loom}
        none="no loom, by itself"
        choices={job.looms.map(({ id, name }) => ({ value: id, word: name }))}
        onChoice={setLoom}
      />
      <ColourField value={colour} onColour={setColour} />
      <WireNameField label="size; empty: the engine chooses" value={make} onMake={setMake} />
      <button
        type="button"
        className="act filled"
        disabled={circuit === ""}
        onClick={() => void connect()}
      >
        lay this wire
      </button>
    </>
  );
}
