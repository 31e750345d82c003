import type { Job, Wire } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { ColourField } from "../../entry/ColourField.tsx";
import { PinField } from "../../entry/PinField.tsx";
import { SelectField } from "../../entry/SelectField.tsx";
import { WireNameField } from "../../entry/WireNameField.tsx";
import { useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import { circuitsEdit } from "./circuitsEdit.ts";
import { RouteVerb } from "./RouteVerb.tsx";

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
    route: RouteVerb,
  };
  const Form = forms[name];
  return (
    <div className="verb-form">
      <Form {...same} />
    </div>
  );
}

const numberOf = (wire: Wire): string => wire.number ?? wire.id;

function SplitVerb({ wire, onDone }: VerbProps): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const { answer: kinds } = useAnswer("circuitsConnectorKinds", null);
  const [into, setInto] = useState("");
  const [kind, setKind] = useState("");
  const [station, setStation] = useState("");
  const isReady = into !== "" || kind !== "";
  const put = async (): Promise<void> => {
    const change = {
      does: "split" as const,
      wire: wire.id,
      kind,
      station: station === "" ? null : station,
      into: into === "" ? null : into,
    };
    if (await circuitsEdit(`split wire ${numberOf(wire)}`, change)) onDone();
  };
  return (
    <>
      <SelectField
        label="through"
        value={into}
        none="a new connector"
        choices={job.connectors.map(({ id, name }) => ({ value: id, word: `${id} ${name}` }))}
        onChoice={setInto}
      />
      {into === "" && (
        <SelectField
          label="of this kind"
          value={kind}
          none="which kind?"
          choices={(kinds ?? []).map(({ id, name }) => ({ value: id, word: name }))}
          onChoice={setKind}
        />
      )}
      {into === "" && <StationChoice value={station} onStation={setStation} />}
      <button type="button" className="act" disabled={!isReady} onClick={() => void put()}>
        split it there
      </button>
    </>
  );
}

function StationChoice({
  value,
  onStation,
}: {
  value: string;
  onStation: (station: string) => void;
}): ReactNode {
  const stations = useBench((bench) => bench.document!.job.stations);
  return (
    <SelectField
      label="at"
      value={value}
      none="not said yet"
      choices={stations.map(({ id, name }) => ({ value: id, word: name }))}
      onChoice={onStation}
    />
  );
}

const JOINTS: readonly { readonly value: Job["joints"][number]["kind"]; readonly word: string }[] =
  [
    { value: "crimped-splice", word: "crimped" },
    { value: "multiway-bullet", word: "bullets in one sleeve" },
    { value: "ring-stack", word: "rings on one stud" },
    { value: "bus", word: "bar" },
  ];

function JoinVerb({ wire, onDone }: VerbProps): ReactNode {
  const [kind, setKind] = useState(JOINTS[0]!.value);
  const [station, setStation] = useState("");
  const put = async (): Promise<void> => {
    const change = {
      does: "join" as const,
      wire: wire.id,
      kind,
      station: station === "" ? null : station,
    };
    if (await circuitsEdit(`joint in wire ${numberOf(wire)}`, change)) onDone();
  };
  return (
    <>
      <SelectField
        label="joint"
        value={kind}
        choices={JOINTS}
        onChoice={(value) => setKind(value as typeof kind)}
      />
      <StationChoice value={station} onStation={setStation} />
      <button type="button" className="act" onClick={() => void put()}>
        put a joint with a free way there
      </button>
    </>
  );
}

function ColourVerb({ wire, onDone }: VerbProps): ReactNode {
  const [colour, setColour] = useState<Parameters<typeof ColourField>[0]["value"]>(
    wire.colour ?? null,
  );
  const put = async (): Promise<void> => {
    const done = await edit(`colour of wire ${numberOf(wire)}`, {
      op: "set",
      list: "wires",
      id: wire.id,
      path: ["colour"],
      ...(colour === null ? {} : { value: colour }),
    });
    if (done) onDone();
  };
  return (
    <>
      <ColourField value={colour} onColour={setColour} />
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
      <WireNameField label="size" value={wire.size?.make ?? ""} onMake={(make) => void put(make)} />
      {wire.size !== undefined && (
        <button type="button" className="act" onClick={() => void put(null)}>
          let the engine choose
        </button>
      )}
    </>
  );
}

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
