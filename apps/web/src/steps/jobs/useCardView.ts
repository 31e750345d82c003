import { useEffect, useState } from "react";
import { keepLasting, keptDocument, lasting } from "../../device/deviceStore.ts";
import { askLong } from "../../engine/engineClient.ts";
import { server } from "../../server/serverApi.ts";
import type { ListedJob } from "./jobList.ts";
import type { JobCardView } from "./jobsAnswers.ts";

/** One card after the other, so that a full wall does not ask for everything at once. */
let turn: Promise<unknown> = Promise.resolve();

/** What the card shows, worked out once a revision and kept on the device. */
export function useCardView(job: ListedJob): JobCardView | null {
  const [view, setView] = useState<JobCardView | null>(null);
  useEffect(() => {
    let isCurrent = true;
    const work = async (): Promise<void> => {
      if (!isCurrent) return;
      const made = await cardView(job).catch(() => null);
      if (isCurrent) setView(made);
    };
    turn = turn.then(work, work);
    return () => {
      isCurrent = false;
    };
  }, [job]);
  return view;
}

async function cardView(job: ListedJob): Promise<JobCardView | null> {
  const name = `card ${__ENGINE__} ${job.key} ${job.revision}`;
  const kept = await lasting<JobCardView>(name);
  if (kept !== null) return kept;
  const text = await textOf(job.key);
  if (text === null) return null;
  const view = await askLong(text, "jobsCard", undefined);
  await keepLasting(name, view);
  return view;
}

async function textOf(key: string): Promise<string | null> {
  const answer = await server<{ text: string }>("GET", `/jobs/${key}`);
  return answer.kind === "ok" ? answer.value.text : ((await keptDocument(key))?.text ?? null);
}
