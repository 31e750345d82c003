import { type ChangeEvent, type ReactNode, useState } from "react";
import { base64Of } from "../../device/base64Of.ts";
import { server } from "../../server/serverApi.ts";
import { say } from "../../store/benchStore.ts";
import { refreshJobs } from "./jobList.ts";

/** Everything as one file, at any time; taken back only by the owner and only after asking once. */
export function Backup(): ReactNode {
  const [file, setFile] = useState<File | null>(null);
  const pick = (event: ChangeEvent<HTMLInputElement>): void => {
    setFile(event.target.files?.[0] ?? null);
    event.target.value = "";
  };
  return (
    <>
      <h2>Copies</h2>
      <div className="care-row">
        <a className="act file-act" href="/api/backup" download>
          save everything as one file
        </a>
        <label className="act file-act">
          take jobs back from such a file
          <input
            type="file"
            accept=".zip,application/zip"
            className="only-spoken"
            onChange={pick}
          />
        </label>
        {file !== null && (
          <button
            type="button"
            className="act filled"
            onClick={() => void restore(file).then(() => setFile(null))}
          >
            yes, take back {file.name}
          </button>
        )}
      </div>
      <p className="note">
        Jobs, every revision and photographs. Keep a copy somewhere else than on this machine.
      </p>
    </>
  );
}

async function restore(file: File): Promise<void> {
  const answer = await server<{ jobs?: number }>("POST", "/backup/restore", {
    base64: await base64Of(file),
  });
  if (answer.kind === "away") say("The server cannot be reached; nothing was changed.");
  if (answer.kind === "refused") say(answer.refusal.message);
  if (answer.kind === "ok") say(`Taken back from ${file.name}.`);
  await refreshJobs();
}
