import type { ListedTemplate, TemplateAnswers } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { ask } from "../../engine/engineClient.ts";
import { QuantityField } from "../../entry/QuantityField.tsx";
import { SelectField } from "../../entry/SelectField.tsx";
import { TextField } from "../../entry/TextField.tsx";
import { choose, say, useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";

const BASES = [
  { value: "stated", word: "read off it" },
  { value: "measured", word: "measured" },
  { value: "estimated", word: "guessed for now" },
] as const;
type Basis = (typeof BASES)[number]["value"];
type Values = Readonly<Record<string, { readonly value: number; readonly basis: Basis }>>;

type TemplateFormProps = {
  readonly template: ListedTemplate;
  readonly onDone: () => void;
};

/** What must be read or measured of a part before it is put on the machine. Nothing is filled in for anybody. */
export function TemplateForm({ template, onDone }: TemplateFormProps): ReactNode {
  const stations = useBench((bench) => bench.document!.job.stations);
  const chosen = useBench((bench) => bench.chosen);
  const [station, setStation] = useState(chosen?.kind === "station" ? chosen.id : "");
  const [name, setName] = useState(template.name);
  const [values, setValues] = useState<Values>({});
  const missing = template.asks.filter(({ id, isNeeded }) => isNeeded && values[id] === undefined);
  const add = async (): Promise<void> => {
    const answers: TemplateAnswers = values;
    const made = await ask("surveyAdd", {
      template: template.id,
      name,
      answers,
      ...(station === "" ? {} : { station }),
    });
    if (!made.ok) return say(`Still to be entered: ${made.missing.join(", ")}.`);
    if (!(await edit(`add ${name}`, made.operation))) return;
    choose({ kind: "part", id: made.id });
    onDone();
  };
  return (
    <div className="template">
      <h3>{template.name}</h3>
      <div className="template-fields">
        <TextField label="name" value={name} onText={setName} />
        <SelectField
          label="sits at"
          value={station}
          none="not said yet"
          choices={stations.map((one) => ({ value: one.id, word: one.name }))}
          onChoice={setStation}
        />
        {template.asks.map((asked) => (
          <AskField
            key={asked.id}
            asked={asked}
            now={values[asked.id]}
            onValue={(value) => setValues({ ...values, [asked.id]: value })}
          />
        ))}
      </div>
      <div className="slip-verbs">
        <button
          type="button"
          className="act filled"
          disabled={missing.length > 0}
          onClick={() => void add()}
        >
          {missing.length > 0
            ? `still needs ${missing.map(({ word }) => word).join(", ")}`
            : "put it on the machine"}
        </button>
        <button type="button" className="act" onClick={onDone}>
          back to the list
        </button>
      </div>
    </div>
  );
}

type AskFieldProps = {
  readonly asked: ListedTemplate["asks"][number];
  readonly now: Values[string] | undefined;
  readonly onValue: (value: Values[string]) => void;
};

/** One figure with where it comes from. */
function AskField({ asked, now, onValue }: AskFieldProps): ReactNode {
  const [basis, setBasis] = useState<Basis>("stated");
  return (
    <div className="ask-field">
      <QuantityField
        label={`${asked.word}${asked.isNeeded ? "" : ", may come later"}`}
        value={now?.value ?? null}
        unit={asked.unit}
        onValue={(value) => onValue({ value, basis })}
      />
      <p className="note">{asked.howTo}</p>
      <SelectField
        label="it is"
        value={basis}
        choices={BASES}
        onChoice={(next) => {
          setBasis(next as Basis);
          if (now !== undefined) onValue({ value: now.value, basis: next as Basis });
        }}
      />
    </div>
  );
}
