import { type ReactNode, useEffect, useState } from "react";
import { server } from "../../server/serverApi.ts";
import { say, useBench } from "../../store/benchStore.ts";
import { refreshJobs } from "./jobList.ts";

interface Revision {
  readonly revision: number;
  readonly savedAt: string;
  readonly savedBy: string;
  readonly device: string;
  readonly whatChanged: string;
}

/** Every save of a job, newest first. None is ever changed: restoring one makes a new one. */
export function Revisions({ jobKey }: { jobKey: string }): ReactNode {
  const role = useBench((bench) => bench.visitor?.role ?? "view");
  const [rows, setRows] = useState<readonly Revision[] | null>(null);
  const [asked, setAsked] = useState<number | null>(null);
  useEffect(() => {
    void read(jobKey).then(setRows);
  }, [jobKey]);
  const restore = async (revision: number): Promise<void> => {
    const answer = await server("POST", `/jobs/${jobKey}/restore`, { revision });
    if (answer.kind === "refused") say(answer.refusal.message);
    if (answer.kind === "away") say("Restoring needs the server; it cannot be reached now.");
    if (answer.kind === "ok") say(`Revision ${revision} is in use again, as a new revision.`);
    setAsked(null);
    setRows(await read(jobKey));
    await refreshJobs();
  };
  if (rows === null) return <p className="note">asking the server</p>;
  return (
    <ol className="revisions">
      {rows.map((row, i) => (
        <li key={row.revision}>
          <b>{row.revision}</b> <span>{row.whatChanged}</span>
          <span className="note">
            {new Date(row.savedAt).toLocaleString([], { dateStyle: "short", timeStyle: "short" })} ·{" "}
            {row.savedBy}
          </span>
          {i > 0 && role !== "view" && asked !== row.revision && (
            <button type="button" className="act small" onClick={() => setAsked(row.revision)}>
              restore
            </button>
          )}
          {asked === row.revision && (
            <button
              type="button"
              className="act small filled"
              onClick={() => void restore(row.revision)}
            >
              yes, put revision {row.revision} in use
            </button>
          )}
        </li>
      ))}
    </ol>
  );
}

async function read(key: string): Promise<readonly Revision[]> {
  const answer = await server<readonly Revision[] | { revisions: readonly Revision[] }>(
    "GET",
    `/jobs/${key}/revisions`,
  );
  if (answer.kind !== "ok") return [];
  return "revisions" in answer.value ? answer.value.revisions : answer.value;
}
