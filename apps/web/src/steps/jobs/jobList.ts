import { create } from "zustand";
import { keepLasting, keptKeys, lasting } from "../../device/deviceStore.ts";
import { server } from "../../server/serverApi.ts";
import { say } from "../../store/benchStore.ts";
import { goTo } from "../../store/route.ts";

/** One job as the server lists it. */
export interface ListedJob {
  readonly key: string;
  readonly name: string;
  readonly machine: string;
  readonly revision: number;
  readonly savedAt: string;
  readonly savedBy: string;
  readonly isArchived: boolean;
}

export interface ListedDemo {
  readonly name: string;
  readonly line: string;
}

interface JobListState {
  readonly jobs: readonly ListedJob[] | null;
  readonly demos: readonly ListedDemo[];
  /** Keys this device can open without the server. */
  readonly kept: ReadonlySet<string>;
  readonly isAway: boolean;
}

export const useJobList = create<JobListState>()(() => ({
  jobs: null,
  demos: [],
  kept: new Set(),
  isAway: false,
}));

/** The list from the server, or the last one this device saw of it. */
export async function refreshJobs(): Promise<void> {
  const kept = new Set(await keptKeys());
  const answer = await server<{ jobs: readonly ListedJob[] }>("GET", "/jobs");
  if (answer.kind === "ok") {
    await keepLasting("jobs", answer.value.jobs);
    useJobList.setState({ jobs: answer.value.jobs, kept, isAway: false });
  } else {
    const last = await lasting<readonly ListedJob[]>("jobs");
    useJobList.setState({ jobs: last ?? [], kept, isAway: answer.kind === "away" });
    if (answer.kind === "refused") say(answer.refusal.message);
  }
  const demos = await server<readonly ListedDemo[] | { demos: readonly ListedDemo[] }>(
    "GET",
    "/demos",
  );
  if (demos.kind === "ok") {
    useJobList.setState({ demos: "demos" in demos.value ? demos.value.demos : demos.value });
  }
}

type NewJob =
  | { readonly from: "demo"; readonly name: string }
  | { readonly from: "text"; readonly text: string }
  | { readonly from: "copy"; readonly key: string };

/** A new job on the server, put on the bench at once. What cannot be read is said and nothing is made. */
export async function makeJob(source: NewJob): Promise<boolean> {
  const answer = await server<{ key: string }>("POST", "/jobs", source);
  if (answer.kind === "away") {
    say("A new job needs the server; it cannot be reached now.");
    return false;
  }
  if (answer.kind === "refused") {
    const [first] = answer.refusal.refusals ?? [];
    say(`${answer.refusal.message} ${first ? `${first.message} ${first.remedy}` : ""}`.trim());
    return false;
  }
  goTo("survey", answer.value.key);
  return true;
}

export async function archiveJob(key: string, isArchived: boolean): Promise<void> {
  const answer = await server("POST", `/jobs/${key}/archive`, { isArchived });
  if (answer.kind === "away") say("The server cannot be reached; nothing was changed.");
  if (answer.kind === "refused") say(answer.refusal.message);
  await refreshJobs();
}
