import { printQuantity } from "@copperwright/engine/words";
import { type ReactNode, useState } from "react";
import { QuantityField } from "../../entry/QuantityField.tsx";
import { useBench } from "../../store/benchStore.ts";
import { Choice } from "./EngineControl.tsx";
import { PlacePicker } from "./PlacePicker.tsx";
import { addFault, clearFaults, faultWords, removeFault, useTry } from "./tryStore.ts";
import type { TryMachine, TryWire } from "./worker/tryMachine.ts";

const WAYS = ["open", "corrode", "short", "swap"] as const;
type Way = (typeof WAYS)[number];
const CORRODED_OHM = 0.5;
const SHORT_OHM = 0.25;

/** What is to be broken and how: any wire, contact, earth or fuse; open, corroded, shorted with so many ohms, two wires swapped. */
export function FaultMaker({ machine }: { machine: TryMachine }): ReactNode {
  const [place, setPlace] = usePlace(machine);
  const [way, setWay] = useState<Way>("open");
  const wire = machine.wires.find(({ id }) => id === place);
  return (
    <section className="try-break" aria-label="Break something">
      <h2>Break {place === "" ? "something" : wire ? `wire ${wire.label}` : place}</h2>
      <PlacePicker machine={machine} place={place} onPlace={setPlace} />
      <Choice label="How" words={WAYS} now={way} onWord={setWay} />
      {place !== "" && way === "open" && (
        <Do word="open it" onDo={() => addFault({ kind: "open", place })} />
      )}
      {place !== "" && way === "corrode" && <Corrode place={place} />}
      {place !== "" && way === "short" && <Short machine={machine} place={place} wire={wire} />}
      {place !== "" && way === "swap" && <Swap machine={machine} wire={wire} />}
      <FaultList />
    </section>
  );
}

/** The thing chosen anywhere on the bench is the thing to break, until another is picked here. */
function usePlace(machine: TryMachine): readonly [string, (place: string) => void] {
  const chosen = useBench((bench) => bench.chosen?.id ?? null);
  const [picked, setPicked] = useState<{ readonly place: string; readonly over: string | null }>({
    place: "",
    over: null,
  });
  const isBreakable =
    chosen !== null &&
    (machine.wires.some(({ id }) => id === chosen) ||
      machine.places.some(({ ref }) => ref === chosen));
  const place = isBreakable && picked.over !== chosen ? chosen : picked.place;
  return [place, (next) => setPicked({ place: next, over: chosen })];
}

const Do = ({ word, onDo }: { word: string; onDo: () => void }): ReactNode => (
  <button type="button" className="act filled" onClick={onDo}>
    {word}
  </button>
);

function Corrode({ place }: { place: string }): ReactNode {
  const [ohm, setOhm] = useState(CORRODED_OHM);
  return (
    <>
      <QuantityField
        label="ohms more"
        unit="ohm"
        value={ohm}
        least={0.001}
        most={1e6}
        onValue={setOhm}
      />
      <Do word="corrode it" onDo={() => addFault({ kind: "corroded", place, ohm })} />
    </>
  );
}

type ShortProps = {
  readonly machine: TryMachine;
  readonly place: string;
  readonly wire: TryWire | undefined;
};

/** A wire is shorted at one of its ends, anything else at its pin; to earth, or to a wire that lies against it. */
function Short({ machine, place, wire }: ShortProps): ReactNode {
  const [ohm, setOhm] = useState(SHORT_OHM);
  const [end, setEnd] = useState<"from" | "to">("from");
  const [other, setOther] = useState("earth");
  const pin = wire === undefined ? place : wire[end];
  if (!pin.includes(".")) return <p className="note">Choose a wire or a pin to short.</p>;
  const against = machine.wires.filter(({ id }) => wire?.neighbours.includes(id));
  const isKnown = other === "earth" || against.some((one) => one[end] === other);
  const to = isKnown ? other : "earth";
  return (
    <>
      {wire !== undefined && (
        <Choice
          label="At which end"
          words={["from", "to"] as const}
          said={{ from: `at ${wire.from}`, to: `at ${wire.to}` }}
          now={end}
          onWord={setEnd}
        />
      )}
      <label className="entry">
        <span className="note">touches</span>
        <select className="field" value={to} onChange={(event) => setOther(event.target.value)}>
          {machine.hasEarth && <option value="earth">earth, the frame</option>}
          {against.map((one) => (
            <option key={one.id} value={one[end]}>
              wire {one.label}, its neighbour
            </option>
          ))}
        </select>
      </label>
      <QuantityField
        label="through so many ohms"
        unit="ohm"
        value={ohm}
        least={0.001}
        most={1e4}
        onValue={setOhm}
      />
      <Do
        word={`short it, ${printQuantity(ohm, "ohm")}`}
        onDo={() => addFault({ kind: "short", a: pin, b: to, ohm })}
      />
    </>
  );
}

function Swap({ machine, wire }: { machine: TryMachine; wire: TryWire | undefined }): ReactNode {
  const [other, setOther] = useState("");
  if (wire === undefined) return <p className="note">Choose a wire; two wires can be swapped.</p>;
  return (
    <>
      <label className="entry">
        <span className="note">with</span>
        <select className="field" value={other} onChange={(event) => setOther(event.target.value)}>
          <option value="">choose</option>
          {machine.wires
            .filter(({ id }) => id !== wire.id)
            .map(({ id, label, from, to }) => (
              <option key={id} value={id}>
                {label}: {from} to {to}
              </option>
            ))}
        </select>
      </label>
      <button
        type="button"
        className="act filled"
        disabled={other === ""}
        onClick={() => addFault({ kind: "swapped", wires: [wire.id, other] })}
      >
        swap them
      </button>
    </>
  );
}

function FaultList(): ReactNode {
  const faults = useTry((bench) => bench.faults);
  if (faults.length === 0) return null;
  return (
    <div className="try-faults">
      <h3>Set on the bench</h3>
      <ul>
        {faults.map((fault, k) => (
          <li key={k} className="try-fault">
            <FaultMark />
            <span>
              {faultWords(fault)}
              {"ohm" in fault && `, ${printQuantity(fault.ohm, "ohm")}`}
            </span>
            <button type="button" className="act small" onClick={() => removeFault(k)}>
              put right
            </button>
          </li>
        ))}
      </ul>
      {faults.length > 1 && (
        <button type="button" className="act" onClick={clearFaults}>
          put everything right
        </button>
      )}
    </div>
  );
}

/** The zigzag of something broken or shorted: a fault on the bench is no finding and gets no tag. */
export function FaultMark(): ReactNode {
  return (
    <svg viewBox="0 0 12 20" width="12" height="20" aria-hidden="true" className="try-zigzag">
      <path d="M8 1 3 9l5 1-5 9" fill="none" stroke="currentColor" strokeWidth="2" />
    </svg>
  );
}
