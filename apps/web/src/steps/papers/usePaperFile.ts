import { useState } from "react";
import { openToPrint } from "../../device/openToPrint.ts";
import { saveFile } from "../../device/saveFile.ts";
import { askLong } from "../../engine/engineClient.ts";
import { faultText } from "../../engine/faultText.ts";
import { say, useBench } from "../../store/benchStore.ts";
import { useJobText } from "../../store/useJobText.ts";
import type { PaperChoice } from "./papersAnswers.ts";

export interface PaperAsked {
  readonly name: string;
  /** One sheet of it, -1 the last; absent: all. */
  readonly index?: number;
}

export interface PaperFile {
  readonly isMaking: boolean;
  readonly print: (asked: PaperAsked) => Promise<void>;
  readonly save: (asked: PaperAsked) => Promise<void>;
}

/** Makes one PDF of the pack, or one sheet of it, to be printed or saved: nobody waits for the others. */
export function usePaperFile(choice: PaperChoice): PaperFile {
  const text = useJobText();
  const job = useBench((bench) => bench.document?.job.id ?? "job");
  const [isMaking, setMaking] = useState(false);
  const make = async ({ name, index }: PaperAsked): Promise<Uint8Array | null> => {
    if (text === null) return null;
    setMaking(true);
    try {
      const question = { choice, name, ...(index !== undefined && { index }) };
      const bytes = await askLong(text, "papersPdf", question);
      if (bytes === null) say("There is no such sheet any more: the job has changed.");
      return bytes;
    } catch (error) {
      say(`The sheet could not be made: ${faultText(error)}`);
      return null;
    } finally {
      setMaking(false);
    }
  };
  return {
    isMaking,
    print: async (asked) => {
      const bytes = await make(asked);
      if (bytes !== null) printBytes(bytes);
    },
    save: async (asked) => {
      const bytes = await make(asked);
      const sheet = asked.index === undefined ? "" : `-sheet-${asked.index + 1}`;
      if (bytes !== null) saveFile(`${job}-${asked.name}${sheet}.pdf`, bytes, "application/pdf");
    },
  };
}

/** Says how to print it, since a page fitted to the paper is not true to size. */
export function printBytes(bytes: Uint8Array): void {
  const isOpen = openToPrint(bytes);
  say(
    isOpen
      ? "Print at 100 %, with no fitting to the page, and measure the 100 mm bar before trusting the sheet."
      : "The browser would not open the sheet in a page of its own. Save it, and print the file at 100 %.",
  );
}
