import type { Operation, Wire } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { ColourField } from "../../entry/ColourField.tsx";
import { PinField } from "../../entry/PinField.tsx";
import { WireNameField } from "../../entry/WireNameField.tsx";
import { ConsequenceLine } from "../../frame/ConsequenceLine.tsx";
import { edit } from "../../store/editing.ts";
import { WayFields } from "../loom/WayFields.tsx";
import { ConnectorForm } from "../wiring/ConnectorForm.tsx";
import { JointForm } from "../wiring/JointForm.tsx";
import { circuitsEdit } from "./circuitsEdit.ts";

export type WireVerbName = "split" | "join" | "colour" | "size" | "move" | "route";

type VerbProps = { readonly wire: Wire; readonly onDone: () => void };

/** What is asked for one act on a wire. */
export function WireVerb({ name, ...same }: VerbProps & { name: WireVerbName }): ReactNode {
  const forms = {
    split: SplitVerb,
    join: JoinVerb,
    colour: ColourVerb,
    size: SizeVerb,
    move: MoveVerb,
    route: WayFields,
  };
  const Form = forms[name];
  return (
    <div className="verb-form">
      <Form {...same} />
    </div>
  );
}

const numberOf = (wire: Wire): string => wire.number ?? wire.id;

const SplitVerb = ({ wire, onDone }: VerbProps): ReactNode => (
  <ConnectorForm wire={wire.id} onDone={onDone} />
);

const JoinVerb = ({ wire, onDone }: VerbProps): ReactNode => (
  <JointForm wire={wire.id} onDone={onDone} />
);

function ColourVerb({ wire, onDone }: VerbProps): ReactNode {
  const [colour, setColour] = useState<Parameters<typeof ColourField>[0]["value"]>(
    wire.colour ?? null,
  );
  const operation: Operation = {
    op: "set",
    list: "wires",
    id: wire.id,
    path: ["colour"],
    ...(colour === null ? {} : { value: colour }),
  };
  const put = async (): Promise<void> => {
    if (await edit(`colour of wire ${numberOf(wire)}`, operation)) onDone();
  };
  const isNew = JSON.stringify(colour) !== JSON.stringify(wire.colour ?? null);
  return (
    <>
      <ColourField value={colour} onColour={setColour} />
      <ConsequenceLine operation={isNew ? operation : null} />
      <button type="button" className="act" onClick={() => void put()}>
        take this colour
      </button>
    </>
  );
}

function SizeVerb({ wire, onDone }: VerbProps): ReactNode {
  const put = async (make: string | null): Promise<void> => {
    const what = make === null ? "chosen by the engine" : `to ${make}`;
    const change = { does: "size" as const, wire: wire.id, make };
    if (await circuitsEdit(`wire ${numberOf(wire)} ${what}`, change)) onDone();
  };
  return (
    <>
      <WireNameField
        label="size"
        value={wire.size?.make ?? ""}
        onMake={(make) => void put(make)}
        before={(make) => <ConsequenceLine operation={sizeOf(wire.id, make)} />}
      />
      {wire.size !== undefined && (
        <>
          <button type="button" className="act" onClick={() => void put(null)}>
            let the engine choose
          </button>
          <ConsequenceLine operation={sizeOf(wire.id, null)} />
        </>
      )}
    </>
  );
}

const sizeOf = (id: string, make: string | null): Operation => ({
  op: "set",
  list: "wires",
  id,
  path: ["size"],
  ...(make === null ? {} : { value: { make, basis: "chosen" } }),
});

function MoveVerb({ wire }: VerbProps): ReactNode {
  return (["from", "to"] as const).map((end) => (
    <PinField
      key={end}
      label={end === "from" ? "its one end lies on" : "its other end lies on"}
      value={wire[end]}
      onPin={(pin) =>
        void circuitsEdit(`move wire ${numberOf(wire)} to ${pin}`, {
          does: "move-end",
          wire: wire.id,
          end,
          pin,
        })
      }
    />
  ));
}
