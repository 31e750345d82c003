import type { ListedTemplate } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { ask } from "../../engine/engineClient.ts";
import { useAnswer } from "../../engine/useAnswer.ts";
import { choose } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import { TemplateForm } from "./TemplateForm.tsx";

/** Generic parts, looked for by any word; the one taken asks for the figures it needs. */
export function PartPicker(): ReactNode {
  const [words, setWords] = useState("");
  const [taken, setTaken] = useState<ListedTemplate | null>(null);
  const { answer: templates } = useAnswer("surveyTemplates", words);
  if (taken !== null) return <TemplateForm template={taken} onDone={() => setTaken(null)} />;
  const groups = [...new Set((templates ?? []).map(({ group }) => group))];
  return (
    <div className="picker">
      <label className="picker-find">
        <span className="note">look for a part by any word</span>
        <input className="field" value={words} onChange={(event) => setWords(event.target.value)} />
      </label>
      {templates !== null && templates.length === 0 && (
        <p className="note">
          No part of that name. "Any other load" takes everything that draws current between two
          terminals.
        </p>
      )}
      {groups.map((group) => (
        <section key={group} aria-label={group}>
          <h3 className="unknown-head">{group}</h3>
          <div className="picker-row">
            {templates
              ?.filter((one) => one.group === group)
              .map((template) => (
                <button
                  key={template.id}
                  type="button"
                  className="act small"
                  onClick={() => setTaken(template)}
                >
                  {template.name}
                </button>
              ))}
          </div>
        </section>
      ))}
      <Masses />
    </div>
  );
}

const MASSES = [
  { kind: "frame", word: "frame" },
  { kind: "engine", word: "engine" },
  { kind: "forks", word: "forks" },
  { kind: "bars", word: "handlebars" },
  { kind: "tank", word: "tank" },
  { kind: "lamp-shell", word: "lamp shell" },
  { kind: "other", word: "another mass" },
] as const;

/** What conducts without being a wire: earth wires are fastened to it, and each place they get is a point of it. */
function Masses(): ReactNode {
  const add = async (kind: string, name: string): Promise<void> => {
    const [id = "M1"] = await ask("surveyNewIds", ["M"]);
    const item = { id, name, kind, points: [] };
    if (await edit(`add ${name}`, { op: "add", list: "bodies", item })) {
      choose({ kind: "body", id });
    }
  };
  return (
    <section aria-label="masses">
      <h3 className="unknown-head">masses that carry earths</h3>
      <div className="picker-row">
        {MASSES.map(({ kind, word }) => (
          <button
            key={kind}
            type="button"
            className="act small"
            onClick={() => void add(kind, word)}
          >
            {word}
          </button>
        ))}
      </div>
    </section>
  );
}
