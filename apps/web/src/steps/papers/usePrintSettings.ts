import { useCallback, useState } from "react";
import { say } from "../../store/benchStore.ts";
import { type PrintSettings, readSettings } from "./printSettings.ts";

const KEPT = "copperwright-papers";

/** How this device prints, kept on it: another device has another printer. */
export function usePrintSettings(): readonly [
  PrintSettings,
  (change: Partial<PrintSettings>) => void,
] {
  const [settings, setSettings] = useState(kept);
  const put = useCallback((change: Partial<PrintSettings>) => {
    setSettings((old) => {
      const next = { ...old, ...change };
      keep(next);
      return next;
    });
  }, []);
  return [settings, put];
}

function kept(): PrintSettings {
  try {
    return readSettings(localStorage.getItem(KEPT));
  } catch {
    return readSettings(null);
  }
}

function keep(settings: PrintSettings): void {
  try {
    localStorage.setItem(KEPT, JSON.stringify(settings));
  } catch {
    say("This device keeps no settings: the paper and the printer hold until the page is closed.");
  }
}
