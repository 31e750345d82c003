import type { Loom } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { SelectField } from "../../entry/SelectField.tsx";
import { TextField } from "../../entry/TextField.tsx";
import { useBench } from "../../store/benchStore.ts";
import { editField } from "../../store/editField.ts";
import { coverings } from "./coverings.ts";
import { LoomWires } from "./LoomWires.tsx";
import { takeAway, wiringEdit } from "./wiringEdit.ts";

type LoomRowProps = {
  readonly loom: Loom;
  readonly isOpen: boolean;
  readonly onOpen: () => void;
};

/** One loom: name, covering, its wires, taken away once none lies in it. */
export function LoomRow({ loom, isOpen, onOpen }: LoomRowProps): ReactNode {
  const { id, name } = loom;
  const wires = useBench((bench) => bench.document!.job.wires);
  const own = wires.filter((wire) => wire.loom === id).map((wire) => wire.id);
  const set = (what: string, path: string, value: string): void =>
    editField(`${name}: ${what}`, { list: "looms", id }, [path], value);
  return (
    <li className="loom-item" aria-label={`Loom ${name}`}>
      <div className="wiring-row">
        <TextField
          label={`name of ${id}`}
          value={name}
          onText={(next) => set("name", "name", next)}
        />
        <SelectField
          label="covering"
          value={loom.covering ?? ""}
          none="not chosen"
          choices={coverings}
          onChoice={(next) => set(next || "covering left open", "covering", next)}
        />
        <button type="button" className="act small" aria-expanded={isOpen} onClick={onOpen}>
          {own.length === 1 ? "1 wire in it" : `${own.length} wires in it`}
        </button>
        <button
          type="button"
          className="act small"
          aria-label={`remove loom ${name}`}
          onClick={() => void takeAway(`remove loom ${name}`, "looms", id)}
        >
          remove
        </button>
      </div>
      {isOpen && <OwnWires key={own.join()} loom={loom} own={own} />}
    </li>
  );
}

/** Wires ticked lie in the loom, all others do not; done at once, as one act. */
function OwnWires({ loom, own }: { loom: Loom; own: readonly string[] }): ReactNode {
  const wires = useBench((bench) => bench.document!.job.wires);
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set(own));
  const added = [...ticked].filter((id) => !own.includes(id));
  const gone = own.filter((id) => !ticked.has(id));
  const put = async (): Promise<void> => {
    if (added.length > 0) {
      const change = { does: "put-in-loom" as const, loom: loom.id, wires: added };
      await wiringEdit(`${added.length} wires into ${loom.name}`, change);
    }
    if (gone.length > 0) {
      const change = { does: "put-in-loom" as const, loom: null, wires: gone };
      await wiringEdit(`${gone.length} wires out of ${loom.name}`, change);
    }
  };
  const words = [
    added.length > 0 ? `put ${added.length} in` : "",
    gone.length > 0 ? `take ${gone.length} out` : "",
  ].filter(Boolean);
  return (
    <>
      <LoomWires wires={wires} ticked={ticked} onTicked={setTicked} />
      <button
        type="button"
        className="act"
        disabled={words.length === 0}
        onClick={() => void put()}
      >
        {words.length === 0 ? "nothing changed yet" : words.join(", ")}
      </button>
    </>
  );
}
