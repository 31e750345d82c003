import { addFromCatalogue } from "../catalogue/partCatalogue.ts";
import type { TemplateAnswers } from "../catalogue/partTemplate.ts";
import { freePin } from "../edit/freePin.ts";
import { idMaker } from "../edit/idMaker.ts";
import type { Operation } from "../edit/operation.ts";
import type { DropClass, Job } from "../job.ts";
import { applied } from "./applied.ts";

/** Puts parts, joints and wires on a job one after another, each with an id that is still free; keeps the operations that did it. */
export function partBuilder(job: Job, circuit: { name: string; dropClass: DropClass }) {
  const operations: Operation[] = [];
  const parts: string[] = [];
  const nextId = idMaker(job);
  let now = job;
  const put = (operation: Operation): void => {
    operations.push(operation);
    now = applied(now, operation);
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
    wire(from: string, to: string, station?: string): string {
      const [a, b] = [pin(from, station), pin(to, station)];
      const id = nextId("W");
      const item = { id, from: a, to: b, circuit: circuitId, status: "new" };
      put({ op: "add", list: "wires", item: loom === undefined ? item : { ...item, loom } });
      return id;
    },
  };
}

/** The loom most wires are in. */
function busiestLoom({ looms, wires }: Job): string | undefined {
  const countOf = (id: string): number => wires.filter(({ loom }) => loom === id).length;
  return [...looms].sort((p, q) => countOf(q.id) - countOf(p.id) || (p.id < q.id ? -1 : 1))[0]?.id;
}
