import type { Bond } from "@copperwright/engine";
import { memo, type ReactNode } from "react";
import { PinField } from "../../entry/PinField.tsx";
import { QuantityField } from "../../entry/QuantityField.tsx";
import { SelectField } from "../../entry/SelectField.tsx";
import { useBench } from "../../store/benchStore.ts";
import { editField } from "../../store/editField.ts";
import { edit } from "../../store/editing.ts";
import { bondKinds } from "./bondKinds.ts";

/** Resistances a bond may be said to have, ohm: a strap of a micro-ohm to a ten-megohm leak. */
const LEAST_OHM = 1e-6;
const MOST_OHM = 1e7;

/** A bond: what lies between which two places, how well it conducts new and aged. */
export const BondRow = memo(function BondRow({ bond }: { bond: Bond }): ReactNode {
  const isChosen = useBench(
    (bench) => bench.chosen?.kind === "bond" && bench.chosen.id === bond.id,
  );
  const set = (what: string, path: string, value: unknown): void =>
    editField(`bond ${bond.id}: ${what}`, { list: "bonds", id: bond.id }, [path], value);
  const ohm = (path: "newOhm" | "agedOhm", word: string): ReactNode => (
    <QuantityField
      label={word}
      value={bond[path]?.value ?? null}
      unit="ohm"
      least={LEAST_OHM}
      most={MOST_OHM}
      onValue={(value) => set(word, path, { value, basis: "measured" })}
    />
  );
  return (
    <li className={isChosen ? "wiring-row now" : "wiring-row"} aria-label={`Bond ${bond.id}`}>
      <PinField
        label={`${bond.id} from`}
        value={bond.from}
        onPin={(pin) => pin !== bond.from && set("from", "from", pin)}
      />
      <PinField
        label="to"
        value={bond.to}
        onPin={(pin) => pin !== bond.to && set("to", "to", pin)}
      />
      <SelectField
        label="it is"
        value={bond.kind}
        choices={bondKinds}
        onChoice={(kind) => set("what it is", "kind", kind)}
      />
      {ohm("newOhm", "when new")}
      {ohm("agedOhm", "aged")}
      <button
        type="button"
        className="act small"
        aria-label={`remove bond ${bond.id}`}
        onClick={() =>
          void edit(`remove bond ${bond.id}`, { op: "remove", list: "bonds", id: bond.id })
        }
      >
        remove
      </button>
    </li>
  );
});
