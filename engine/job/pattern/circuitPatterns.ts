import type { TemplateAnswers } from "../catalogue/partTemplate.ts";
import { NEW_PIN } from "../edit/freePin.ts";
import type { Job } from "../job.ts";
import { pinRef } from "../pinsOf.ts";
import type { CircuitPattern, PatternAsk, PatternMade } from "./circuitPattern.ts";
import { liveWhen } from "./liveWhen.ts";
import { partBuilder } from "./partBuilder.ts";
import { relayPattern } from "./relayPattern.ts";
import { signalPatterns } from "./signalPatterns.ts";
import { simplePatterns } from "./simplePatterns.ts";
import { ALWAYS, type Terms } from "./terms.ts";

/** Ready groups, in the order a machine is wired. */
export const circuitPatterns: readonly CircuitPattern[] = [
  ...simplePatterns,
  relayPattern,
  ...signalPatterns,
];

export type ListedPattern = Omit<CircuitPattern, "build">;

export const listedPatterns = (): readonly ListedPattern[] =>
  circuitPatterns.map(({ build: _, ...listed }) => listed);

/**
 * A ready group put on the machine.
 *
 * @param text    pins, wires and stations by question
 * @param figures numbers with where they come from, by question
 * @returns the words of what must still be answered, where something needed is missing
 */
export function patternOperation(
  job: Job,
  id: string,
  text: Readonly<Record<string, string>>,
  figures: TemplateAnswers,
): PatternMade {
  const pattern = circuitPatterns.find((one) => one.id === id);
  if (pattern === undefined) return { ok: false, missing: [id] };
  const isAnswered = ({ id: ask, kind }: PatternAsk): boolean =>
    kind === "number" ? figures[ask] !== undefined : (text[ask] ?? "") !== "";
  const missing = pattern.asks
    .filter((ask) => !ask.isOptional && !isAnswered(ask))
    .map(({ word }) => word);
  if (missing.length > 0) return { ok: false, missing };
  const live = liveOf(job, text.feed);
  const circuit = { name: pattern.name, dropClass: pattern.dropClass };
  const builder = partBuilder(job, circuit, live);
  pattern.build(builder, { text: (ask) => text[ask] ?? "", figure: (ask) => figures[ask] });
  builder.colour();
  const operation = { op: "batch", name: pattern.name, operations: builder.operations() } as const;
  return { ok: true, operation, parts: builder.parts(), live };
}

/** When the live a pattern is fed from is there; a pattern without one depends on nothing. */
function liveOf(job: Job, feed: string | undefined): Terms | null {
  if (feed === undefined || feed === "") return ALWAYS;
  if (!feed.endsWith(`.${NEW_PIN}`)) return liveWhen(job, feed);
  const owner = feed.slice(0, feed.indexOf("."));
  const joint = job.joints.find(({ id }) => id === owner);
  return joint?.ways[0] === undefined ? null : liveWhen(job, pinRef(owner, joint.ways[0]));
}
