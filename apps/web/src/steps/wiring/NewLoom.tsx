import { type ReactNode, useState } from "react";
import { SelectField } from "../../entry/SelectField.tsx";
import { TextField } from "../../entry/TextField.tsx";
import { useBench } from "../../store/benchStore.ts";
import { coverings } from "./coverings.ts";
import { LoomWires } from "./LoomWires.tsx";
import type { Covering } from "./wiringChange.ts";
import { wiringEdit } from "./wiringEdit.ts";

/** A further loom with the wires that are to lie in it, as one act. */
export function NewLoom(): ReactNode {
  const wires = useBench((bench) => bench.document!.job.wires);
  const [isOpen, setOpen] = useState(false);
  const [name, setName] = useState("");
  const [covering, setCovering] = useState("");
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set());
  if (!isOpen) {
    return (
      <button type="button" className="act" onClick={() => setOpen(true)}>
        add a loom
      </button>
    );
  }
  const add = async (): Promise<void> => {
    const done = await wiringEdit(`loom ${name}`, {
      does: "loom",
      name,
      wires: [...ticked],
      ...(covering === "" ? {} : { covering: covering as Covering }),
    });
    if (!done.isDone) return;
    setOpen(false);
    setName("");
    setTicked(new Set());
  };
  return (
    <section className="wiring-form" aria-label="A new loom">
      <TextField label="name of the new loom" value={name} onText={setName} />
      <SelectField
        label="covering"
        value={covering}
        none="not chosen"
        choices={coverings}
        onChoice={setCovering}
      />
      <LoomWires wires={wires} ticked={ticked} onTicked={setTicked} />
      <div className="slip-verbs">
        <button
          type="button"
          className="act filled"
          disabled={name === ""}
          onClick={() => void add()}
        >
          {name === "" ? "it needs a name" : `add it with ${ticked.size} wires`}
        </button>
        <button type="button" className="act" onClick={() => setOpen(false)}>
          leave it
        </button>
      </div>
    </section>
  );
}
