import { type ReactNode, useState } from "react";
import { PinField } from "../../entry/PinField.tsx";
import { PartPicker } from "../survey/PartPicker.tsx";
import { Earths } from "../wiring/Earths.tsx";
import { Looms } from "../wiring/Looms.tsx";
import { Meetings } from "../wiring/Meetings.tsx";
import { CircuitCare } from "./CircuitCare.tsx";
import { takePin, useConnecting } from "./connecting.ts";
import { PatternPicker } from "./PatternPicker.tsx";

export type DrawerName =
  | "part"
  | "pattern"
  | "connect"
  | "meetings"
  | "earths"
  | "looms"
  | "circuits";

const TITLES: Readonly<Record<DrawerName, string>> = {
  part: "Add a part",
  pattern: "Ready circuits",
  connect: "Connect two terminals",
  meetings: "Joints and connectors",
  earths: "Earths: masses, earth points and bonds",
  looms: "Looms",
  circuits: "Circuits of this machine",
};

/** What is added to the wiring, below the sheet. */
export function Drawer({ name, onClose }: { name: DrawerName; onClose: () => void }): ReactNode {
  return (
    <section className="circuits-drawer" aria-label={TITLES[name]}>
      <header className="drawer-head">
        <h2>{TITLES[name]}</h2>
        <button type="button" className="act small" onClick={onClose}>
          close
        </button>
      </header>
      {name === "part" && <PartPicker />}
      {name === "pattern" && <PatternPicker />}
      {name === "connect" && <ConnectByName />}
      {name === "meetings" && <Meetings />}
      {name === "earths" && <Earths />}
      {name === "looms" && <Looms />}
      {name === "circuits" && <CircuitCare />}
    </section>
  );
}

/** The way without a drag: both terminals by name. */
function ConnectByName(): ReactNode {
  const from = useConnecting((connecting) => connecting.from);
  const [typed, setTyped] = useState("");
  return (
    <div className="connect-by-name">
      {from === null ? (
        <PinField
          label="first terminal"
          value={typed}
          howTo="by part, terminal or name; or choose a thing on the diagram and use its slip"
          onPin={(pin) => {
            setTyped("");
            takePin(pin);
          }}
        />
      ) : (
        <p className="note">The first end is on {from}. The other is asked above the diagram.</p>
      )}
    </div>
  );
}
