import type { ReactNode } from "react";
import { verdictWord } from "./verdictWord.ts";

/** A swing tag with its word: more ink and more cut corners mean more serious, so that it survives without colour. */
export function SeverityTag({ severity }: { severity: string }): ReactNode {
  return (
    <span className={`tag ${severity}`}>
      <span className="tag-hole" aria-hidden="true" />
      {verdictWord(severity)}
    </span>
  );
}
