import type { Body } from "@copperwright/engine";
import { memo, type ReactNode, useState } from "react";
import { SelectField } from "../../entry/SelectField.tsx";
import { TextField } from "../../entry/TextField.tsx";
import { useBench } from "../../store/benchStore.ts";
import { editField } from "../../store/editField.ts";
import { bodyKinds } from "./bondKinds.ts";
import { PointRow } from "./PointRow.tsx";
import { takeAway, wiringEdit } from "./wiringEdit.ts";

/** A mass: its name, what it is, its earth points. */
export const BodyRow = memo(function BodyRow({ body }: { body: Body }): ReactNode {
  const { id, name, kind } = body;
  const set = (what: string, path: string, value: string): void =>
    editField(`${name}: ${what}`, { list: "bodies", id }, [path], value);
  return (
    <li className="body-row" aria-label={`Mass ${name}`}>
      <div className="wiring-row">
        <TextField
          label={`name of ${id}`}
          value={name}
          onText={(next) => set("name", "name", next)}
        />
        <SelectField
          label="it is the"
          value={kind}
          choices={bodyKinds}
          onChoice={(next) => set("what it is", "kind", next)}
        />
        <button
          type="button"
          className="act small"
          aria-label={`remove ${name}`}
          onClick={() => void takeAway(`remove ${name}`, "bodies", id)}
        >
          remove
        </button>
      </div>
      <ul className="point-list" aria-label={`Earth points of ${name}`}>
        {body.points.map((point, i) => (
          <PointRow key={point.id} body={body} point={point} index={i} />
        ))}
      </ul>
      <NewPoint body={body} />
    </li>
  );
});

function NewPoint({ body }: { body: Body }): ReactNode {
  const stations = useBench((bench) => bench.document!.job.stations);
  const [station, setStation] = useState("");
  const add = (): void =>
    void wiringEdit(`earth point on ${body.name}`, {
      does: "point",
      body: body.id,
      ...(station === "" ? {} : { station }),
    });
  return (
    <div className="wiring-row">
      <SelectField
        label={`a further earth point on ${body.name}, at`}
        value={station}
        none="not said yet"
        choices={stations.map((one) => ({ value: one.id, word: one.name }))}
        onChoice={setStation}
      />
      <button type="button" className="act small" onClick={add}>
        add this point
      </button>
    </div>
  );
}
