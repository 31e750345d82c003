import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { applyOperation, type Job, type Operation, readJob } from "../../engine/job/index.ts";
import { checkedJob } from "../../engine/judge/index.ts";
import { workmanshipJudges } from "../../engine/judge/workmanship/index.ts";
import { messageOf, severitiesOf } from "../../engine/messages/index.ts";

interface Sample {
  readonly code: string;
  readonly severity: string;
  readonly subject: string;
  readonly what: string;
  readonly change: readonly Operation[];
}

const textAt = (path: string): string => readFileSync(new URL(path, import.meta.url), "utf8");

function jobAt(path: string): Job {
  const read = readJob(textAt(path));
  if (!read.ok) throw new Error(read.refusals.map(({ message }) => message).join("\n"));
  return read.job;
}

const clean = jobAt("workmanship-clean.json");
const samples: readonly Sample[] = JSON.parse(textAt("workmanship.json"));

/** Findings of the workmanship judges alone, after changes to the clean job. */
function findingsOf(change: readonly Operation[]) {
  let job = clean;
  for (const operation of change) {
    const applied = applyOperation(job, operation);
    if (!applied.ok) throw new Error(applied.refusals.map(({ message }) => message).join("\n"));
    job = applied.job;
  }
  const { design } = checkedJob(job);
  return workmanshipJudges.flatMap((judge) => judge(design));
}

/** Codes in the catalogue's workmanship files. */
const codes = ["Colours", "Connectors", "Joints", "Places", "Terminals"]
  .map((name) => textAt(`../../engine/messages/catalogue/workmanship${name}.md`))
  .flatMap((text) => [...text.matchAll(/^## (.+)$/gm)].map((match) => match[1]!))
  .sort();

test("the clean loom has nothing to say about its making", () => {
  expect(findingsOf([]).map(messageOf)).toEqual([]);
});

test("every code has a sample", () => {
  expect([...new Set(samples.map(({ code }) => code))].sort()).toEqual(codes);
});

describe("one change of the clean loom", () => {
  test.each(samples.map((sample) => [`${sample.code}: ${sample.what}`, sample] as const))(
    "%s",
    (_, { code, severity, subject, change }) => {
      const found = findingsOf(change);
      const said = found.map((one) => `${one.code} ${one.severity} ${one.subject.id}`);
      expect(said).toContain(`${code} ${severity} ${subject}`);
      for (const one of found) {
        expect(severitiesOf(one.code)).toContain(one.severity);
        expect(messageOf(one)).not.toContain("%");
      }
    },
  );
});
