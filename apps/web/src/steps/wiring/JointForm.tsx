import { type ReactNode, useState } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { SelectField } from "../../entry/SelectField.tsx";
import { TextField } from "../../entry/TextField.tsx";
import { choose, useBench } from "../../store/benchStore.ts";
import { jointKinds } from "./jointKinds.ts";
import { WhereField } from "./WhereField.tsx";
import type { JointKind, Where } from "./wiringChange.ts";
import { wiringEdit } from "./wiringEdit.ts";

type JointFormProps = {
  /** The wire it is put in; null: asked for. */
  readonly wire: string | null;
  readonly onDone: () => void;
};

/** A joint with a free way: put in a wire at a place along the loom, or by itself for wires to come. */
export function JointForm({ wire: given, onDone }: JointFormProps): ReactNode {
  const wires = useBench((bench) => bench.document!.job.wires);
  const [asked, setAsked] = useState("");
  const [kind, setKind] = useState<JointKind>("crimped-splice");
  const [name, setName] = useState("");
  const [where, setWhere] = useState<Where | null>(null);
  const wire = given ?? asked;
  const { answer: way } = useAnswer("wiringWay", wire);
  const known = wires.find(({ id }) => id === wire);
  const number = known?.number ?? wire;
  const put = async (): Promise<void> => {
    const what = wire === "" ? `joint ${name}`.trim() : `joint in wire ${number}`;
    const change = { does: "joint" as const, wire: wire === "" ? null : wire, kind, name, where };
    const done = await wiringEdit(what, change);
    if (!done.isDone) return;
    onDone();
    if (given === null && done.id !== null) choose({ kind: "joint", id: done.id });
  };
  return (
    <>
      {given === null && (
        <SelectField
          label="in wire"
          value={asked}
          none="by itself, for wires to come"
          choices={wires.map(({ id, number: own, from, to }) => ({
            value: id,
            word: `${own ?? id}, ${from} to ${to}`,
          }))}
          onChoice={setAsked}
        />
      )}
      <SelectField
        label="joint"
        value={kind}
        choices={jointKinds}
        onChoice={(value) => setKind(value as JointKind)}
      />
      <WhereField value={where} onWhere={setWhere} way={way} />
      <TextField label="name, may come later" value={name} mayBeEmpty onText={setName} />
      {known?.lengthMm !== undefined && (
        <p className="note">
          The length typed for the whole wire does not hold for its two pieces; they are measured by
          their way.
        </p>
      )}
      <button type="button" className="act" onClick={() => void put()}>
        {wire === "" ? "put a joint there" : "put a joint with a free way there"}
      </button>
    </>
  );
}
