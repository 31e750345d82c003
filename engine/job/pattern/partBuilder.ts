import { addFromCatalogue } from "../catalogue/partCatalogue.ts";
import type { TemplateAnswers } from "../catalogue/partTemplate.ts";
import { freePin } from "../edit/freePin.ts";
import { idMaker } from "../edit/idMaker.ts";
import type { Operation } from "../edit/operation.ts";
import type { DropClass, Job } from "../job.ts";
import { applied } from "./applied.ts";
import { newColours } from "./newColours.ts";
import { intentsFor, intentsOnlyWhile } from "./patternIntents.ts";
import type { Terms } from "./terms.ts";

/**
 * Puts parts, joints and wires on a job one after another, each with an id that is still free; keeps the operations that did it. What it puts on says when its
 * loads are to work, and its wires get colours at the end.
 *
 * @param live  when the circuit's live is there; null: not told, and then nothing is said of its loads
 */
export function partBuilder(
  job: Job,
  circuit: { name: string; dropClass: DropClass },
  live: Terms | null,
) {
  const operations: Operation[] = [];
  const parts: string[] = [];
  const nextId = idMaker(job);
  const purposes = new Map<string, string>();
  let now = job;
  const put = (operation: Operation): void => {
    operations.push(operation);
    now = applied(now, operation);
  };
  const putAll = (all: readonly Operation[]): void => {
    for (const one of all) put(one);
  };
  const pin = (asked: string, station?: string): string => {
    const free = freePin(now, asked, { station });
    for (const operation of free.operations) put(operation);
    return free.pin;
  };
  const circuitId = nextId("CIRC");
  put({ op: "add", list: "circuits", item: { id: circuitId, ...circuit } });
  const loom = busiestLoom(job);
  return {
    job: (): Job => now,
    circuit: circuitId,
    operations: (): readonly Operation[] => operations,
    parts: (): readonly string[] => parts,
    nextId,
    put,
    /** A part of the catalogue as new; its id. */
    part(template: string, station: string, name: string, answers: TemplateAnswers = {}): string {
      const made = addFromCatalogue(now, { template, station, name, status: "new", answers });
      if (!made.ok) throw new Error(`a pattern left out ${made.missing.join(", ")}`);
      put(made.operation);
      parts.push(made.id);
      return made.id;
    },
    /** A crimped joint with so many ways. */
    joint(station: string, wayCount: number): string {
      const id = nextId("J");
      const ways = Array.from({ length: wayCount }, (_, i) => `${i + 1}`);
      const item = { id, station, kind: "crimped-splice", ways, status: "new" };
      put({ op: "add", list: "joints", item });
      return id;
    },
    pin,
    /** Two ends by pin; `purpose` is a role of tables/colourSchemes. */
    wire(from: string, to: string, station?: string, purpose?: string): string {
      const [a, b] = [pin(from, station), pin(to, station)];
      const id = nextId("W");
      if (purpose !== undefined) purposes.set(id, purpose);
      const item = { id, from: a, to: b, circuit: circuitId, status: "new" };
      put({ op: "add", list: "wires", item: loom === undefined ? item : { ...item, loom } });
      return id;
    },
    /** The loads on a pin are to work in each of these ways, as long as the live is there. */
    works(pinOf: string, own: Terms): void {
      if (live !== null) putAll(intentsFor(now, pinOf, own, live, nextId));
    },
    /** What a switch feeds works from now on only with that switch so. */
    onlyWhile(knob: string, pinOf: string, allowed: readonly string[]): void {
      putAll(intentsOnlyWhile(now, knob, pinOf, allowed));
    },
    /** Colours for every wire put on that has none. */
    colour(): void {
      putAll(coloursFor(job, now, purposes));
    },
  };
}

/** The loom most wires are in. */
function busiestLoom({ looms, wires }: Job): string | undefined {
  const countOf = (id: string): number => wires.filter(({ loom }) => loom === id).length;
  return [...looms].sort((p, q) => countOf(q.id) - countOf(p.id) || (p.id < q.id ? -1 : 1))[0]?.id;
}

/** A colour for each wire that was not there before and has none. */
function coloursFor(
  before: Job,
  now: Job,
  purposes: ReadonlyMap<string, string>,
): readonly Operation[] {
  const known = new Set(before.wires.map(({ id }) => id));
  const fresh = now.wires.map(({ id }) => id).filter((id) => !known.has(id));
  return [...newColours(now, fresh, purposes)].map(
    ([id, value]): Operation => ({ op: "set", list: "wires", id, path: ["colour"], value }),
  );
}
