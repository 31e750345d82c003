import type { Bond } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { PinField } from "../../entry/PinField.tsx";
import { SelectField } from "../../entry/SelectField.tsx";
import { bondKinds } from "./bondKinds.ts";
import { wiringEdit } from "./wiringEdit.ts";

/** A bond between two places: both ends by name, and what it is. */
export function BondForm(): ReactNode {
  const [from, setFrom] = useState("");
  const [to, setTo] = useState("");
  const [kind, setKind] = useState<Bond["kind"]>("strap");
  const isSame = from !== "" && from === to && !from.endsWith(".*");
  const put = async (): Promise<void> => {
    const ends = `${ownerWord(from)} to ${ownerWord(to)}`;
    const done = await wiringEdit(`bond ${ends}`, { does: "bond", from, to, kind });
    if (!done.isDone) return;
    setFrom("");
    setTo("");
  };
  return (
    <div className="wiring-row" role="group" aria-label="A new bond">
      <PinField
        label="a bond from"
        value={from}
        onPin={setFrom}
        howTo="a mass, an earth point or a case"
      />
      <PinField
        label="to"
        value={to}
        onPin={setTo}
        howTo={isSame ? "both ends are on the same place" : "another mass"}
      />
      <SelectField
        label="it is"
        value={kind}
        choices={bondKinds}
        onChoice={(value) => setKind(value as Bond["kind"])}
      />
      <button
        type="button"
        className="act"
        disabled={from === "" || to === "" || isSame}
        onClick={() => void put()}
      >
        add this bond
      </button>
    </div>
  );
}

const ownerWord = (pin: string): string => (pin.endsWith(".*") ? pin.slice(0, -2) : pin);
