import type { Job } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { SelectField } from "../../entry/SelectField.tsx";
import { TextField } from "../../entry/TextField.tsx";
import { choose, useBench } from "../../store/benchStore.ts";
import { WireTicks } from "./WireTicks.tsx";
import { wiringEdit } from "./wiringEdit.ts";

type ConnectorFormProps = {
  /** A wire it is put in in any case; null: all are ticked. */
  readonly wire: string | null;
  readonly onDone: () => void;
};

/** A connector put into one wire or several that pass a station, each through a cavity of its own. */
export function ConnectorForm({ wire, onDone }: ConnectorFormProps): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const [into, setInto] = useState("");
  const [made, setMade] = useState<Made>({ kind: "", station: "", name: "" });
  const [ticked, setTicked] = useState<ReadonlySet<string>>(new Set());
  const known = job.connectors.find(({ id }) => id === into);
  const place = known?.station ?? made.station;
  const { answer: passing } = useAnswer("wiringPassing", place === "" ? null : place);
  const offered = job.wires.filter(({ id }) => id !== wire && passing?.includes(id));
  const ids = [
    ...(wire === null ? [] : [wire]),
    ...offered.map(({ id }) => id).filter((id) => ticked.has(id)),
  ];
  const { answer: kinds } = useAnswer("circuitsConnectorKinds", null);
  const kind = kinds?.find(({ id }) => id === (known?.kind ?? made.kind));
  const wanted = ids.length + (known === undefined ? 0 : wiresIn(job, known.id));
  const tooMany = kind?.mostCount != null && wanted > kind.mostCount ? kind.mostCount : null;
  const isReady = tooMany === null && (into !== "" || made.kind !== "") && ids.length > 0;
  const put = async (): Promise<void> => {
    const numberOf = (id: string): string => job.wires.find((one) => one.id === id)?.number ?? id;
    const what = ids.length === 1 ? `split wire ${numberOf(ids[0]!)}` : `split ${ids.length} wires`;
    const done = await wiringEdit(what, {
      does: "connector",
      wires: ids,
      into: into === "" ? null : into,
      ...made,
      station: made.station === "" ? null : made.station,
    });
    if (!done.isDone) return;
    onDone();
    if (wire === null && done.id !== null) choose({ kind: "connector", id: done.id });
  };
  return (
    <>
      <SelectField
        label="through"
        value={into}
        none="a new connector"
        choices={job.connectors.map(({ id, name: own }) => ({ value: id, word: `${id} ${own}` }))}
        onChoice={setInto}
      />
      {known === undefined && <NewConnector made={made} onMade={setMade} />}
      {(wire === null || place !== "") && (
        <WireTicks
          label={wire === null ? "wires it cuts" : "cut there too"}
          wires={offered}
          ticked={ticked}
          onTicked={setTicked}
        />
      )}
      {tooMany !== null && (
        <p className="note" role="alert">
          That kind is made with {tooMany} cavities at most, and {wanted} wires would go through it.
          Take fewer wires, a larger kind or a second connector.
        </p>
      )}
      <button type="button" className="act" disabled={!isReady} onClick={() => void put()}>
        {ids.length > 1 ? `split ${ids.length} wires there` : "split it there"}
      </button>
    </>
  );
}

/** Cavities of a connector that wires lie in. */
function wiresIn({ wires }: Job, connector: string): number {
  const cavities = wires
    .flatMap(({ from, to }) => [from, to])
    .filter((pin) => pin.startsWith(`${connector}.`))
    .map((pin) => pin.slice(0, -1));
  return new Set(cavities).size;
}

interface Made {
  readonly kind: string;
  readonly station: string;
  readonly name: string;
}

/** What a connector that is not there yet is to be. */
function NewConnector({ made, onMade }: { made: Made; onMade: (made: Made) => void }): ReactNode {
  const stations = useBench((bench) => bench.document!.job.stations);
  const { answer: kinds } = useAnswer("circuitsConnectorKinds", null);
  return (
    <>
      <SelectField
        label="of this kind"
        value={made.kind}
        none="which kind?"
        choices={(kinds ?? []).map((one) => ({ value: one.id, word: one.name }))}
        onChoice={(kind) => onMade({ ...made, kind })}
      />
      <SelectField
        label="at"
        value={made.station}
        none="not said yet"
        choices={stations.map((one) => ({ value: one.id, word: one.name }))}
        onChoice={(station) => onMade({ ...made, station })}
      />
      <TextField
        label="name, may come later"
        value={made.name}
        mayBeEmpty
        onText={(name) => onMade({ ...made, name })}
      />
    </>
  );
}
