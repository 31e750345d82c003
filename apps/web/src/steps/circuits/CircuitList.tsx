import type { ReactNode } from "react";
import { SelectField } from "../../entry/SelectField.tsx";
import { useBench } from "../../store/benchStore.ts";
import { CircuitThumb } from "./CircuitThumb.tsx";
import type { DrawerName } from "./Drawer.tsx";
import { useIsNarrow } from "./useIsNarrow.ts";

type CircuitListProps = {
  readonly circuit: string | null;
  readonly onCircuit: (circuit: string | null) => void;
  readonly drawer: DrawerName | null;
  readonly onDrawer: (drawer: DrawerName | null) => void;
};

const DRAWERS: readonly { readonly name: DrawerName; readonly word: string }[] = [
  { name: "part", word: "add a part" },
  { name: "pattern", word: "ready circuits" },
  { name: "connect", word: "connect two terminals" },
  { name: "meetings", word: "joints and connectors" },
  { name: "earths", word: "earths" },
  { name: "looms", word: "looms" },
  { name: "circuits", word: "name circuits" },
];

/** Which diagram is on the sheet, and what can be added to it. On a phone every circuit with a small picture of its own. */
export function CircuitList({ circuit, onCircuit, drawer, onDrawer }: CircuitListProps): ReactNode {
  const circuits = useBench((bench) => bench.document!.job.circuits);
  const isNarrow = useIsNarrow();
  return (
    <header className="circuits-head">
      {isNarrow ? (
        <ul className="circuit-cards" aria-label="Circuits">
          {[{ id: null, name: "Whole machine" }, ...circuits].map(({ id, name }) => (
            <li key={id ?? "*"}>
              <button
                type="button"
                className={id === circuit ? "plain circuit-card now" : "plain circuit-card"}
                aria-pressed={id === circuit}
                onClick={() => onCircuit(id)}
              >
                <span className="circuit-thumb">
                  {id !== null && <CircuitThumb circuit={id} />}
                </span>
                <span>{name}</span>
              </button>
            </li>
          ))}
        </ul>
      ) : (
        <SelectField
          label="diagram of"
          value={circuit ?? ""}
          none="the whole machine"
          choices={circuits.map(({ id, name }) => ({ value: id, word: name }))}
          onChoice={(id) => onCircuit(id === "" ? null : id)}
        />
      )}
      <div className="circuits-verbs">
        {DRAWERS.map(({ name, word }) => (
          <button
            key={name}
            type="button"
            className="act"
            aria-expanded={drawer === name}
            onClick={() => onDrawer(drawer === name ? null : name)}
          >
            {word}
          </button>
        ))}
      </div>
    </header>
  );
}
