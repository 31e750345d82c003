import { type CheckedJob, fingerprint } from "@copperwright/engine";
import type { PackIssue } from "@copperwright/engine/paper";
import {
  type BuildCard,
  buildCards,
  loadReader,
  type TestSheetSection,
  testSheetOf,
} from "@copperwright/engine/scenes";
import { verdictWord } from "../../../frame/verdictWord.ts";

/** Everything the take-away shows: cards to build by, the test sheet, and a page for each fuse and circuit to find a fault by. */
export interface TakeAwayData {
  readonly job: string;
  readonly name: string;
  readonly machine: string;
  /** "7"; "7+2" where two changes since are not saved. */
  readonly revision: string;
  readonly fingerprint: string;
  readonly supply: string;
  readonly verdict: string;
  readonly cards: readonly BuildCard[];
  readonly sections: readonly TestSheetSection[];
  readonly fuses: readonly FusePage[];
  readonly circuits: readonly CircuitPage[];
}

const revisionText = (own: number, issue: PackIssue | null): string =>
  issue === null || issue.unsavedCount === 0
    ? `${issue?.revision ?? own}`
    : `${issue.revision}+${issue.unsavedCount}`;

export interface FusePage {
  readonly fuse: string;
  readonly ratingA: number;
  readonly dies: readonly string[];
  readonly wires: readonly string[];
}

export interface CircuitPage {
  readonly name: string;
  readonly wires: readonly {
    readonly number: string;
    readonly colour: string;
    readonly from: string;
    readonly to: string;
  }[];
}

export function takeAwayData(checked: CheckedJob, issue: PackIssue | null = null): TakeAwayData {
  const { design, result } = checked;
  const { job } = design;
  const { machine, supply } = job;
  const loadOf = loadReader(job);
  const number = new Map(job.wires.map((wire) => [wire.id, wire.number ?? wire.id]));
  return {
    job: job.id,
    name: job.name,
    machine: `${machine.maker} ${machine.model}`,
    revision: revisionText(job.revision, issue),
    fingerprint: fingerprint(job),
    supply: `${supply.nominalV} V, ${supply.earthPolarity} earth`,
    verdict: verdictWord(result.verdict),
    cards: buildCards(checked),
    sections: testSheetOf(checked),
    fuses: result.fuses.map(({ fuse, ratingA, dies, protects }) => ({
      fuse,
      ratingA,
      dies: [...new Set(dies.map(loadOf))],
      wires: protects.map((id) => number.get(id) ?? id),
    })),
    circuits: job.circuits.map(({ id, name }) => ({
      name,
      wires: job.wires
        .filter((wire) => wire.circuit === id && wire.status !== "remove")
        .map((wire) => ({
          number: wire.number ?? wire.id,
          colour: [wire.colour?.main, wire.colour?.tracer].filter(Boolean).join(" "),
          from: wire.from,
          to: wire.to,
        })),
    })),
  };
}
