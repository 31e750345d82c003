import { readFileSync } from "node:fs";
import { applyOperation, checkedJob, type Job, readJob } from "@copperwright/engine";
import { sceneSource } from "@copperwright/engine/scenes";
import { expect, test } from "vitest";
import type { Held } from "../../../engine/held.ts";
import { supplyAnswers } from "./supplyAnswers.ts";
import { TOPICS } from "./supplyStore.ts";
import { restsOn } from "./supplyWords.ts";
import { topicAnswer } from "./topicAnswer.ts";

function demo(): Job {
  const path = new URL("../../../../../../demos/aldreth-single.json", import.meta.url);
  const read = readJob(readFileSync(path, "utf8"));
  if (!read.ok) throw new Error("the demo reads");
  return read.job;
}

const job = demo();
const checked = checkedJob(job);
const scenes = sceneSource(checked);
const held: Held = { job, checked: () => checked, scenes: () => scenes };
const asked = (question: Partial<Parameters<typeof supplyAnswers.supplyView>[1]>) => {
  const view = supplyAnswers.supplyView(held, { changes: [], traceText: null, ...question });
  if (!view.ok) throw new Error(view.refusals[0]!.message);
  return view;
};

test("every figure a sum line names is among those the answer rests on", () => {
  const { answer } = asked({});
  for (const used of [
    "volts the balance is struck at",
    "charging current a battery takes",
    "band of a stated output point",
    "band of an estimated output point",
    "set volts by temperature",
    "ampere-hours got back",
    "Peukert's law",
    "least volts at the posts while cranking",
    "battery while standing and starting",
    "heat of a shunt regulator",
  ]) {
    expect(restsOn(answer, used), used).not.toBe("");
  }
});

test("every question has its answer in a line", () => {
  const { answer } = asked({});
  for (const topic of TOPICS) expect(topicAnswer(topic, answer)).toMatch(/\w/);
  expect(topicAnswer("start", answer)).toBe("kicked over");
});

test("watts thought of raise the balance speed, and the job as it is stands beside it", () => {
  const { answer, before } = asked({
    changes: [{ kind: "add", name: "heated grips", powerW: 5 }],
  });
  const [now, former] = [answer.balances[0]!, before!.balances[0]!];
  expect(now.demandA).toBeGreaterThan(former.demandA);
  expect(now.balanceRpm!).toBeGreaterThan(former.balanceRpm!);
});

test("a ride of one's own is taken, a bad one is refused with its line", () => {
  const good = asked({ traceText: "timeS,speedRpm\n0,3000\n600,3000\n" });
  expect(good.answer.rides.map(({ ride }) => ride)).toEqual(["trace"]);
  expect(good.answer.rides[0]!.durationS).toBe(600);
  const bad = supplyAnswers.supplyView(held, {
    changes: [],
    traceText: "timeS,speedRpm\n0,3000\n0,x\n",
  });
  expect(bad.ok).toBe(false);
  if (!bad.ok) expect(bad.refusals[0]!.line).toBe(3);
});

test("a lamp swapped for LED is one act that the job takes and can give back", () => {
  const act = supplyAnswers.supplyLedAct(held, {
    changes: [{ kind: "led", part: "HEAD", powerW: 8 }],
  });
  const done = applyOperation(job, act);
  if (!done.ok) throw new Error(done.refusals[0]!.message);
  const lamp = done.job.parts.find(({ id }) => id === "HEAD")!;
  expect(lamp).toMatchObject({ kind: "lamp", source: "led" });
  const back = applyOperation(done.job, done.inverse);
  expect(back.ok && back.job).toEqual(job);
});

test("a conversion is a document that reads, on the volts asked for", () => {
  const view = supplyAnswers.supplyConversion(held, { to: { nominalV: 12 }, stockText: null });
  if (!view.ok) throw new Error(view.refusals[0]!.message);
  const read = readJob(view.text);
  expect(read.ok && read.job.supply.nominalV).toBe(12);
  expect(view.plan.parts.length).toBeGreaterThan(10);
});
