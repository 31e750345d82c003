import { type ChangeEvent, type ReactNode, useState } from "react";
import { saveFile } from "../../../device/saveFile.ts";
import { ask, askLong } from "../../../engine/engineClient.ts";
import { faultText } from "../../../engine/faultText.ts";
import { say, useBench } from "../../../store/benchStore.ts";
import { edit } from "../../../store/editing.ts";
import { useIssue } from "../../../store/useIssue.ts";
import { useJobText } from "../../../store/useJobText.ts";

/** One file with cards, test sheet and fault pages for a place without the bench, and the way its ticks come home. */
export function TakeAway(): ReactNode {
  const text = useJobText();
  const name = useBench((bench) => bench.document?.job.id ?? "job");
  const issue = useIssue();
  const [isBusy, setBusy] = useState(false);
  const make = async (): Promise<void> => {
    if (text === null) return;
    setBusy(true);
    try {
      const html = await askLong(text, "papersTakeAway", { issue });
      saveFile(`${name}-take-away.html`, html, "text/html");
    } catch (error) {
      say(`The take-away could not be made: ${faultText(error)}`);
    }
    setBusy(false);
  };
  return (
    <details className="paper-options">
      <summary>Take-away</summary>
      <p className="note">
        One file of build cards, test sheet and fault pages. It needs no bench and no network; its
        ticks come back as a file.
      </p>
      <div className="care-row">
        <button
          type="button"
          className="act small"
          disabled={isBusy || text === null}
          onClick={() => void make()}
        >
          save the take-away
        </button>
        <label className="act small file-act">
          take its ticks back
          <input
            type="file"
            accept=".json,application/json"
            className="only-spoken"
            onChange={(event) => void takeBack(event)}
          />
        </label>
      </div>
    </details>
  );
}

async function takeBack(event: ChangeEvent<HTMLInputElement>): Promise<void> {
  const [file] = event.target.files ?? [];
  event.target.value = "";
  if (file === undefined) return;
  const read = await ask("papersTicks", { text: await file.text() });
  if (!read.ok) return say(read.message);
  if (read.operation === null)
    return say(`Nothing new: all ${read.knownCount} ticks and readings are in the job already.`);
  const isDone = await edit("ticks of a take-away", read.operation);
  if (isDone)
    say(
      `Taken back: ${read.tickCount} ticks and ${read.readingCount} readings, ${read.knownCount} of them known already.`,
    );
}
