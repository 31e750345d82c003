import type { Operation } from "@copperwright/engine";
import type { ReactNode } from "react";
import { consequenceText } from "./consequenceText.ts";
import { useConsequence } from "./useConsequence.ts";

/** What a change would lead to, told before it is made: tried on a copy, again after every edit. */
export function ConsequenceLine({ operation }: { operation: Operation | null }): ReactNode {
  const consequence = useConsequence(operation);
  if (operation === null) return null;
  return (
    <p className="note consequence" aria-live="polite">
      {consequenceText(consequence)}
    </p>
  );
}
