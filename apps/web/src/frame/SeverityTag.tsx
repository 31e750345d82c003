import type { ReactNode } from "react";

const WORDS: Readonly<Record<string, string>> = {
  stop: "stop",
  mend: "mend",
  advise: "advise",
  "not-proven": "not proven",
};

/** A swing tag with its word: more ink and more cut corners mean more serious, so that it survives without colour. */
export function SeverityTag({ severity }: { severity: string }): ReactNode {
  return (
    <span className={`tag ${severity}`}>
      <span className="tag-hole" aria-hidden="true" />
      {WORDS[severity] ?? severity}
    </span>
  );
}
