import type { ListedTemplate } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
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
    </div>
  );
}
