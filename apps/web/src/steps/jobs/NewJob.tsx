import { type ChangeEvent, type ReactNode, useState } from "react";
import { say } from "../../store/benchStore.ts";
import { makeJob, useJobList } from "./jobList.ts";

const MOST_BYTES = 20 * 1024 * 1024;

/** A new job from a demo or from a file; copying stands on each card. */
export function NewJob({ isFirst }: { isFirst: boolean }): ReactNode {
  const demos = useJobList((list) => list.demos);
  const [isBusy, setBusy] = useState(false);
  const make = async (source: Parameters<typeof makeJob>[0]): Promise<void> => {
    setBusy(true);
    await makeJob(source);
    setBusy(false);
  };
  return (
    <section className="new-job" aria-label="New job">
      <h2>{isFirst ? "Begin with a ready machine, or with a file of your own" : "New job"}</h2>
      <ul className="demo-list">
        {demos.map(({ name, line }, i) => (
          <li key={name}>
            <button
              type="button"
              className={isFirst && i === 0 ? "act filled" : "act"}
              disabled={isBusy}
              onClick={() => void make({ from: "demo", name })}
            >
              {line}
            </button>
          </li>
        ))}
        <li>
          <label className="act file-act">
            from a file
            <input
              type="file"
              accept=".json,application/json"
              className="only-spoken"
              onChange={(event) => void fromFile(event, make)}
            />
          </label>
        </li>
      </ul>
      <p className="note">
        The machines offered are invented. A job file is the one JSON file the command line reads
        and writes.
      </p>
    </section>
  );
}

async function fromFile(
  event: ChangeEvent<HTMLInputElement>,
  make: (source: { from: "text"; text: string }) => Promise<void>,
): Promise<void> {
  const [file] = event.target.files ?? [];
  event.target.value = "";
  if (file === undefined) return;
  if (file.size > MOST_BYTES) {
    say(`${file.name} is larger than 20 MB, which no job is. Choose the job's own JSON file.`);
    return;
  }
  await make({ from: "text", text: await file.text() });
}
