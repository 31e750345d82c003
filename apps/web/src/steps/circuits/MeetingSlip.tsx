import type { Connector, Joint } from "@copperwright/engine";
import type { ReactNode } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { SelectField } from "../../entry/SelectField.tsx";
import { TextField } from "../../entry/TextField.tsx";
import { Slip } from "../../frame/Slip.tsx";
import { useBench } from "../../store/benchStore.ts";
import { editField } from "../../store/editField.ts";
import { jointKinds } from "../wiring/jointKinds.ts";
import { WhereField } from "../wiring/WhereField.tsx";
import type { Where } from "../wiring/wiringChange.ts";
import { takeAway, wiringEdit } from "../wiring/wiringEdit.ts";
import { Neighbours } from "./Neighbours.tsx";
import { PinList } from "./PinList.tsx";
import { TakeOut } from "./TakeOut.tsx";
import { WorstFinding } from "./WorstFinding.tsx";

type At = { readonly x: number; readonly y: number } | undefined;
type SlipProps = { readonly at: At; readonly onClose: () => void };

/** A joint: what meets there, what it is, where along the loom; taken out where wires only pass. */
export function JointSlip({ joint, ...same }: SlipProps & { readonly joint: Joint }): ReactNode {
  const { id, kind, ways, station, offset } = joint;
  const name = joint.name ?? id;
  const where: Where | null =
    offset !== undefined
      ? { kind: "run", run: offset.run, mm: offset.mm.value }
      : station === undefined
        ? null
        : { kind: "station", station };
  const pins = [
    ...ways.map((way) => ({ ref: `${id}.${way}`, word: `way ${way}` })),
    { ref: `${id}.*`, word: "a free way" },
  ];
  return (
    <MeetingSlip list="joints" id={id} name={name} kind={kind} pins={pins} {...same}>
      <SelectField
        label="made as"
        value={kind}
        choices={jointKinds}
        onChoice={(next) =>
          editField(`joint ${name}: ${next}`, { list: "joints", id }, ["kind"], next)
        }
      />
      <WhereField
        label="sits at"
        value={where}
        onWhere={(next) =>
          void wiringEdit(`joint ${name}: place`, { does: "place-joint", id, where: next })
        }
      />
    </MeetingSlip>
  );
}

/** A connector: what passes through it, its kind, its station. */
export function ConnectorSlip({
  connector,
  ...same
}: SlipProps & { readonly connector: Connector }): ReactNode {
  const { id, kind, cavities, station } = connector;
  const stations = useBench((bench) => bench.document!.job.stations);
  const { answer: kinds } = useAnswer("circuitsConnectorKinds", null);
  const name = connector.name || id;
  const pins = cavities.flatMap((cavity) => [
    { ref: `${id}.${cavity}p`, word: `${cavity}, plug` },
    { ref: `${id}.${cavity}s`, word: `${cavity}, socket` },
  ]);
  return (
    <MeetingSlip list="connectors" id={id} name={name} kind={kind} pins={pins} {...same}>
      <SelectField
        label="kind"
        value={kind}
        choices={(kinds ?? [{ id: kind, name: kind }]).map((one) => ({
          value: one.id,
          word: one.name,
        }))}
        onChoice={(next) =>
          editField(`connector ${name}: ${next}`, { list: "connectors", id }, ["kind"], next)
        }
      />
      <SelectField
        label="sits at"
        value={station ?? ""}
        none="not said"
        choices={stations.map((one) => ({ value: one.id, word: one.name }))}
        onChoice={(next) =>
          editField(`connector ${name}: place`, { list: "connectors", id }, ["station"], next)
        }
      />
    </MeetingSlip>
  );
}

type MeetingSlipProps = SlipProps & {
  readonly list: "joints" | "connectors";
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly pins: Parameters<typeof PinList>[0]["pins"];
  readonly children: ReactNode;
};

function MeetingSlip(props: MeetingSlipProps): ReactNode {
  const { list, id, name, kind, pins, at, onClose, children } = props;
  const word = list === "joints" ? "joint" : "connector";
  return (
    <Slip title={name} label={`${word} ${name}`} at={at} onClose={onClose}>
      <p className="note">
        {id}, {word}, {kind}
      </p>
      <WorstFinding ids={[id]} />
      <TextField
        label="name"
        value={name}
        onText={(text) => editField(`${word} ${name}: name`, { list, id }, ["name"], text)}
      />
      {children}
      <PinList pins={pins} />
      <TakeOut
        list={list}
        id={id}
        word={`${word} ${name}`}
        onTake={async () => {
          if (await takeAway(`take ${word} ${name} out`, list, id)) onClose();
        }}
        onTakeAll={async (wireCount) => {
          const change = { does: "remove-whole" as const, list, id };
          const what = `remove ${word} ${name} with ${wireCount} wires`;
          if ((await wiringEdit(what, change)).isDone) onClose();
        }}
      />
      <Neighbours thing={{ kind: word, id }} />
    </Slip>
  );
}
