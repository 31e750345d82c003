import type { Job, Operation } from "@copperwright/engine";
import type { BuildCard } from "@copperwright/engine/scenes";
import { useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";

export type BuildMark = Job["build"][number]["done"];

/** What is ticked: "WIRE mark" for every build record. */
export type DoneMarks = ReadonlyMap<string, string>;

export const doneOf = (build: Job["build"]): DoneMarks =>
  new Map(build.map(({ id, subject, done }) => [`${subject} ${done}`, id]));

export const isTicked = (done: DoneMarks, subject: string, mark: BuildMark): boolean =>
  done.has(`${subject} ${mark}`);

export const marksOf = (card: BuildCard): readonly BuildMark[] => [
  "cut",
  ...card.ends.map(({ end }) => (end === "from" ? "from-end" : "to-end") as BuildMark),
];

export const isDone = (card: BuildCard, done: DoneMarks): boolean =>
  marksOf(card).every((mark) => isTicked(done, card.wire, mark));

/** Ticks or unticks one thing done; who and when go into the record. */
export function tick(subject: string, mark: BuildMark, words: string): void {
  const { document, visitor } = useBench.getState();
  if (document === null) return;
  const old = document.job.build.find(
    (record) => record.subject === subject && record.done === mark,
  );
  const operation: Operation =
    old === undefined
      ? {
          op: "add",
          list: "build",
          item: {
            id: recordId(),
            subject,
            done: mark,
            by: visitor?.who ?? "somebody",
            date: today(),
          },
        }
      : { op: "remove", list: "build", id: old.id };
  void edit(old === undefined ? words : `not ${words}`, operation);
}

/** An id nobody else makes: two devices tick the same job at the same time. */
export const recordId = (): string => `r${crypto.randomUUID().replaceAll("-", "").slice(0, 24)}`;

export function today(): string {
  const now = new Date();
  const pad = (count: number): string => String(count).padStart(2, "0");
  return `${now.getFullYear()}-${pad(now.getMonth() + 1)}-${pad(now.getDate())}`;
}
