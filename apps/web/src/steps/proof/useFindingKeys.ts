import { useEffect } from "react";
import type { FindingRow } from "./findingRows.ts";

/** `.` and `,` open the next and the previous finding. */
export function useFindingKeys(
  rows: readonly FindingRow[],
  open: string | null,
  onOpen: (id: string) => void,
): void {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      const step = event.key === "." ? 1 : event.key === "," ? -1 : 0;
      if (step === 0 || event.ctrlKey || event.metaKey || event.altKey) return;
      if (event.target instanceof HTMLElement && event.target.closest("input, select, textarea"))
        return;
      if (localStorage.getItem("copperwright-keys") === "off") return;
      const next = rows[rows.findIndex(({ id }) => id === open) + step];
      if (next !== undefined) onOpen(next.id);
    };
    addEventListener("keydown", press);
    return () => removeEventListener("keydown", press);
  }, [rows, open, onOpen]);
}
