import type { ListedPattern } from "@copperwright/engine";
import { type ReactNode, useState } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { PatternForm } from "./PatternForm.tsx";

/** Ready groups of parts and wires, each with what it is good for. */
export function PatternPicker(): ReactNode {
  const { answer: patterns } = useAnswer("circuitsPatterns", null);
  const [taken, setTaken] = useState<ListedPattern | null>(null);
  if (taken !== null) return <PatternForm pattern={taken} onDone={() => setTaken(null)} />;
  return (
    <ul className="pattern-list">
      {patterns?.map((pattern) => (
        <li key={pattern.id}>
          <button type="button" className="act" onClick={() => setTaken(pattern)}>
            {pattern.name}
          </button>
          <p className="note">{pattern.what}</p>
        </li>
      ))}
    </ul>
  );
}
