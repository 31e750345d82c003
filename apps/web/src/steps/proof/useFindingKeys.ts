import { useEffect } from "react";
import { shortcutOf } from "../../frame/shortcuts.ts";
import type { FindingRow } from "./findingRows.ts";

/** A key each opens the next and the previous finding. */
export function useFindingKeys(
  rows: readonly FindingRow[],
  open: string | null,
  onOpen: (id: string) => void,
): void {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      const name = shortcutOf(event);
      const step = name === "next-finding" ? 1 : name === "former-finding" ? -1 : 0;
      if (step === 0) return;
      const next = rows[rows.findIndex(({ id }) => id === open) + step];
      if (next !== undefined) onOpen(next.id);
    };
    addEventListener("keydown", press);
    return () => removeEventListener("keydown", press);
  }, [rows, open, onOpen]);
}
