import type { Circuit } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { ask } from "../../engine/engineClient.ts";
import { SelectField } from "../../entry/SelectField.tsx";
import { TextField } from "../../entry/TextField.tsx";
import { useBench } from "../../store/benchStore.ts";
import { editField } from "../../store/editField.ts";
import { edit } from "../../store/editing.ts";

/** What a circuit feeds decides how many volts it may lose. */
const CLASSES: readonly { readonly value: Circuit["dropClass"]; readonly word: string }[] = [
  { value: "main-feed", word: "main feed" },
  { value: "charge", word: "charging" },
  { value: "ignition", word: "ignition" },
  { value: "kill", word: "engine stop" },
  { value: "starter", word: "starter" },
  { value: "starter-control", word: "starter control" },
  { value: "headlamp", word: "headlamp" },
  { value: "tail-signal", word: "tail, brake, signals" },
  { value: "horn", word: "horn" },
  { value: "accessory", word: "accessory" },
  { value: "ac-lighting", word: "AC lighting" },
  { value: "earth", word: "earths" },
];

/** Circuits by name and by what they feed; a new one, another name, one without wires taken away. */
export function CircuitCare(): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const [dropClass, setDropClass] = useState<string>("accessory");
  const add = async (name: string): Promise<void> => {
    const [id = "CIRC1"] = await ask("surveyNewIds", ["CIRC"]);
    await edit(`circuit ${name}`, { op: "add", list: "circuits", item: { id, name, dropClass } });
  };
  return (
    <ul className="circuit-care">
      {job.circuits.map((circuit) => {
        const count = job.wires.filter((wire) => wire.circuit === circuit.id).length;
        return <CircuitRow key={circuit.id} circuit={circuit} wireCount={count} />;
      })}
      <li className="circuit-row">
        <SelectField
          label="a new one feeds"
          value={dropClass}
          choices={CLASSES}
          onChoice={setDropClass}
        />
        <TextField label="its name" value="" onText={(name) => void add(name)} />
      </li>
    </ul>
  );
}

function CircuitRow({ circuit, wireCount }: { circuit: Circuit; wireCount: number }): ReactNode {
  const { id, name, dropClass } = circuit;
  const set = (what: string, path: string, value: string): void =>
    editField(`${name}: ${what}`, { list: "circuits", id }, [path], value);
  return (
    <li className="circuit-row">
      <TextField
        label={`name of ${id}`}
        value={name}
        onText={(next) => set("name", "name", next)}
      />
      <SelectField
        label="feeds"
        value={dropClass}
        choices={CLASSES}
        onChoice={(next) => set("what it feeds", "dropClass", next)}
      />
      {wireCount === 0 ? (
        <button
          type="button"
          className="act small"
          onClick={() => void edit(`remove ${name}`, { op: "remove", list: "circuits", id })}
        >
          remove
        </button>
      ) : (
        <span className="note">{wireCount} wires</span>
      )}
    </li>
  );
}
