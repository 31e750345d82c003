import { type ReactNode, useState } from "react";
import { ask } from "../../engine/engineClient.ts";
import { SelectField } from "../../entry/SelectField.tsx";
import { edit } from "../../store/editing.ts";
import { bodyKinds } from "./bondKinds.ts";

/** A further mass; its earth points are added on its row. */
export function NewBody(): ReactNode {
  const [kind, setKind] = useState<string>("frame");
  const add = async (): Promise<void> => {
    const [id = "M1"] = await ask("surveyNewIds", ["M"]);
    const name = bodyKinds.find(({ value }) => value === kind)?.word ?? kind;
    await edit(`add ${name}`, {
      op: "add",
      list: "bodies",
      item: { id, name, kind, points: [] },
    });
  };
  return (
    <div className="wiring-row" role="group" aria-label="A new mass">
      <SelectField label="a further mass" value={kind} choices={bodyKinds} onChoice={setKind} />
      <button type="button" className="act small" onClick={() => void add()}>
        add it
      </button>
    </div>
  );
}
