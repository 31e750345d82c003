import type { ListedPattern, PatternAsk } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { ask } from "../../engine/engineClient.ts";
import { useAnswer } from "../../engine/useAnswer.ts";
import { PinField } from "../../entry/PinField.tsx";
import { QuantityField } from "../../entry/QuantityField.tsx";
import { SelectField } from "../../entry/SelectField.tsx";
import { ConsequenceLine } from "../../frame/ConsequenceLine.tsx";
import { choose, say, useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import { liveWords } from "./liveWords.ts";

type Text = Readonly<Record<string, string>>;
type Figures = Readonly<Record<string, { readonly value: number; readonly basis: "stated" }>>;

/** The few questions of a ready circuit; nothing is done until all are answered, and then it is one act. */
export function PatternForm({
  pattern,
  onDone,
}: {
  pattern: ListedPattern;
  onDone: () => void;
}): ReactNode {
  const [text, setText] = useState<Text>({});
  const [figures, setFigures] = useState<Figures>({});
  const missing = pattern.asks.filter(
    ({ id, kind, isOptional }) =>
      !isOptional && (kind === "number" ? figures[id] === undefined : !text[id]),
  );
  const put = async (): Promise<void> => {
    const made = await ask("circuitsPattern", { id: pattern.id, text, figures });
    if (!made.ok) return say(`Still to be answered: ${made.missing.join(", ")}.`);
    if (!(await edit(pattern.name, made.operation))) return;
    const [first] = made.parts;
    if (first !== undefined) choose({ kind: "part", id: first });
    onDone();
  };
  return (
    <div className="template">
      <h3>{pattern.name}</h3>
      <p className="note">{pattern.what}</p>
      <div className="template-fields">
        {pattern.asks.map((asked) => (
          <AskedField
            key={asked.id}
            asked={asked}
            text={text[asked.id] ?? ""}
            figure={figures[asked.id]?.value ?? null}
            onText={(value) => setText({ ...text, [asked.id]: value })}
            onFigure={(value) => setFigures({ ...figures, [asked.id]: { value, basis: "stated" } })}
          />
        ))}
      </div>
      {missing.length === 0 && (
        <PatternOutcome
          id={pattern.id}
          text={text}
          figures={figures}
          hasLater={pattern.asks.some(
            ({ id, kind }) => kind === "number" && figures[id] === undefined,
          )}
        />
      )}
      <div className="slip-verbs">
        <button
          type="button"
          className="act filled"
          disabled={missing.length > 0}
          onClick={() => void put()}
        >
          {missing.length > 0 ? `${missing.length} questions open` : "put it on the machine"}
        </button>
        <button type="button" className="act" onClick={onDone}>
          back to the list
        </button>
      </div>
    </div>
  );
}

/** Before it is put on: when its loads are to work, and what it would lead to. */
function PatternOutcome({
  hasLater,
  ...asked
}: {
  readonly id: string;
  readonly text: Text;
  readonly figures: Figures;
  /** A figure that may come later has not come yet. */
  readonly hasLater: boolean;
}): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const { answer, isStale } = useAnswer("circuitsPattern", asked);
  if (answer === null || !answer.ok) return null;
  return (
    <div aria-busy={isStale}>
      {asked.text.feed !== undefined && <p className="note">{liveWords(job, answer.live)}</p>}
      <p className="note">
        Its wires take the machine's own colours where it has them, else colours that are free.
      </p>
      {hasLater && (
        <p className="note">
          A load whose figure is still to come is not in the check yet, nor in what should work.
        </p>
      )}
      <ConsequenceLine operation={isStale ? null : answer.operation} />
    </div>
  );
}

type AskedFieldProps = {
  readonly asked: PatternAsk;
  readonly text: string;
  readonly figure: number | null;
  readonly onText: (text: string) => void;
  readonly onFigure: (value: number) => void;
};

function AskedField({ asked, text, figure, onText, onFigure }: AskedFieldProps): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const label = `${asked.word}${asked.isOptional ? ", may come later" : ""}`;
  switch (asked.kind) {
    case "pin":
      return <PinField label={label} value={text} onPin={onText} howTo={asked.howTo} />;
    case "station":
      return (
        <SelectField
          label={label}
          value={text}
          none="where?"
          choices={job.stations.map(({ id, name }) => ({ value: id, word: name }))}
          onChoice={onText}
        />
      );
    case "wire":
      return (
        <SelectField
          label={label}
          value={text}
          none="which wire?"
          choices={job.wires.map(({ id, number, from, to }) => ({
            value: id,
            word: `${number ?? id}, ${from} to ${to}`,
          }))}
          onChoice={onText}
        />
      );
    case "number":
      return (
        <div>
          <QuantityField label={label} value={figure} unit={asked.unit ?? ""} onValue={onFigure} />
          <p className="note">{asked.howTo}</p>
        </div>
      );
  }
}
