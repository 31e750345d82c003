import { loadsOf } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import { figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { FuseFacts } from "../fuseFacts.ts";
import type { Design, Judge } from "../judge.ts";

/** Fuse, holder, mark and the fuse upstream of it. */
export const fuseFitting: Judge = (design) => {
  const facts = design.fuses;
  return [
    ...facts.flatMap((one) => [...overHolder(one), ...unreadMark(one)]),
    ...selectivity(facts, design.protection.behind),
    ...engineWithLights(design, facts),
  ];
};

function overHolder({ fuse }: FuseFacts): readonly Finding[] {
  const stated = fuse.holderRatingA;
  if (stated !== undefined && fuse.ratingA > stated.value) {
    return [
      findingOf({
        code: "fuse-over-holder",
        severity: "mend",
        subject: { kind: "fuse", id: fuse.id },
        limit: {
          value: stated.value,
          unit: "A",
          table: "job",
          row: fuse.id,
          source: "rating of its holder",
          place: "parts",
          confidence: "own",
        },
        numbers: { fuseA: fuse.ratingA },
      }),
    ];
  }
  const small = new Set(["blade", "mini"]);
  const largest = figure("fuseHolders", "blade-inline-heavy", "maxA");
  if (!small.has(fuse.type) || fuse.ratingA <= largest.value) return [];
  return [
    findingOf({
      code: "fuse-too-large-for-its-kind",
      severity: "advise",
      subject: { kind: "fuse", id: fuse.id },
      limit: largest,
      numbers: { fuseA: fuse.ratingA, kind: fuse.type },
    }),
  ];
}

function unreadMark({ fuse, reading }: FuseFacts): readonly Finding[] {
  if (fuse.marking !== "unknown") return [];
  return [
    findingOf({
      code: "fuse-mark-unknown",
      severity: "advise",
      subject: { kind: "fuse", id: fuse.id },
      figures: reading.figures,
      numbers: { fuseA: reading.highA, lowA: reading.lowA },
    }),
  ];
}

/** A branch fuse every feed of which has passed a main fuse: of the two the branch should be the one that opens. */
function selectivity(
  facts: readonly FuseFacts[],
  behind: ReadonlyMap<string, readonly string[]>,
): readonly Finding[] {
  const usual = figure("protectionRules", "selectivity-usual", "value");
  const sure = figure("protectionRules", "selectivity-sure", "value");
  return facts.flatMap((main): readonly Finding[] => {
    const near = facts.filter(
      (branch) =>
        branch !== main &&
        (behind.get(branch.fuse.id) ?? []).includes(main.fuse.id) &&
        main.reading.lowA < usual.value * branch.reading.highA,
    );
    if (near.length === 0) return [];
    const worst = near.reduce((most, one) => (one.reading.highA > most.reading.highA ? one : most));
    return [
      findingOf({
        code: "fuses-not-selective",
        severity: "advise",
        subject: { kind: "fuse", id: main.fuse.id },
        also: near.map(({ fuse }) => fuse.id),
        limit: usual,
        numbers: {
          mainA: main.reading.lowA,
          branch: worst.fuse.id,
          branchA: worst.reading.highA,
          timesRatio: main.reading.lowA / worst.reading.highA,
          sureRatio: sure.value,
        },
      }),
    ];
  });
}

/** Ignition, headlamp and tail on the very same fuses: any short puts the lights out and stops the engine at once. */
function engineWithLights({ job }: Design, facts: readonly FuseFacts[]): readonly Finding[] {
  const classOf = new Map(job.circuits.map(({ id, dropClass }) => [id, dropClass]));
  const fusesOfLoad = new Map<string, string[]>();
  for (const { fuse, dies } of facts) {
    for (const load of dies) fusesOfLoad.set(load, [...(fusesOfLoad.get(load) ?? []), fuse.id]);
  }
  const fusesOf = (load: string): string => (fusesOfLoad.get(load) ?? []).join("+");
  const loads = loadsOf(job);
  const ofClass = (wanted: string): ReadonlySet<string> => {
    const owners = new Set(
      job.wires
        .filter(({ circuit }) => classOf.get(circuit) === wanted)
        .flatMap(({ from, to }) => [from, to].map((pin) => pin.slice(0, pin.indexOf(".")))),
    );
    const fuses = loads.filter(({ part }) => owners.has(part.id)).map(({ ref }) => fusesOf(ref));
    return new Set(fuses.filter((one) => one !== ""));
  };
  const [ignition, head, tail] = ["ignition", "headlamp", "tail-signal"].map(ofClass);
  const shared = [...ignition!].find((fuses) => head!.has(fuses) && tail!.has(fuses));
  if (shared === undefined) return [];
  const fuses = shared.split("+");
  return [
    findingOf({
      code: "engine-and-lights-on-one-fuse",
      severity: "advise",
      subject: { kind: "fuse", id: fuses.at(-1)! },
      also: fuses.slice(0, -1),
      numbers: { fuses: fuses.join(" and ") },
    }),
  ];
}
