import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applyOperation } from "../edit/applyOperation.ts";
import { EDITED_LISTS, type Operation } from "../edit/operation.ts";
import { operationsOn } from "../edit/operations.fixture.ts";
import type { Job } from "../job.ts";
import { readJob } from "../read/readJob.ts";
import { writeJob } from "../write/writeJob.ts";
import type { MergeConflict } from "./mergeConflict.ts";
import { mergeJobs } from "./mergeJobs.ts";
import { sameValue } from "./sameValue.ts";
import { settleOperation } from "./settleOperation.ts";

const JOBS = readdirSync("demos")
  .filter((name) => name.endsWith(".json"))
  .map((name): Job => {
    const read = readJob(readFileSync(`demos/${name}`, "utf8"));
    if (!read.ok) throw new Error(JSON.stringify(read.refusals.slice(0, 3)));
    return read.job;
  });
const jobNamed = (id: string): Job => JOBS.find((job) => job.id === id)!;
const single = JOBS.find((job) => job.id.includes("aldreth")) ?? JOBS[0]!;

function edited(job: Job, ...operations: readonly Operation[]): Job {
  return operations.reduce((now, operation) => {
    const done = applyOperation(now, operation);
    return done.ok ? done.job : now;
  }, job);
}

function mustEdit(job: Job, operation: Operation): Job {
  const done = applyOperation(job, operation);
  if (!done.ok) throw new Error(JSON.stringify(done.refusals));
  return done.job;
}

const set = (list: "wires" | "parts", id: string, path: string, value: unknown): Operation => ({
  op: "set",
  list,
  id,
  path: [path],
  value,
});

/** Two edits of one wire that get into each other's way, or nearly. */
function contested(base: Job): fc.Arbitrary<readonly [Operation, Operation]> {
  return fc.constantFrom(...base.wires).chain(({ id }) => {
    const edit = fc.oneof(
      fc.constantFrom("note", "number").map((path) => set("wires", id, path, "1")),
      fc.constantFrom("note", "number").map((path) => set("wires", id, path, "2")),
      fc.constant<Operation>({ op: "remove", list: "wires", id }),
    );
    return fc.tuple(edit, edit);
  });
}

/** Three versions of a job: what both began with and what each made of it, some of it at the same wires. */
const versions = (base: Job) => {
  const own = fc.array(operationsOn(base), { maxLength: 4 });
  const shared = fc.array(contested(base), { maxLength: 3 });
  return fc.tuple(own, own, shared).map(([mine, theirs, both]) => ({
    mine: edited(base, ...both.map(([first]) => first), ...mine),
    theirs: edited(base, ...both.map(([, second]) => second), ...theirs),
  }));
};

/** Every conflict settled for one side, one after the other; null where some step cannot be read by itself. */
function settledFor(
  job: Job,
  conflicts: readonly MergeConflict[],
  take: "mine" | "theirs",
): Job | null {
  let now = job;
  for (const conflict of conflicts) {
    const operation = settleOperation(now, conflict, take);
    if (operation === null) return null;
    const done = applyOperation(now, operation);
    if (!done.ok) return null;
    now = done.job;
  }
  return now;
}

describe.each(JOBS.map((job) => [job.id, job] as const))("merging versions of %s", (_, base) => {
  const runs = { numRuns: 25, seed: 20260101 };

  test("the outcome can always be read", () => {
    let conflictCount = 0;
    fc.assert(
      fc.property(versions(base), ({ mine, theirs }) => {
        const { job, conflicts } = mergeJobs(base, mine, theirs);
        const read = readJob(writeJob(job));
        expect(read.ok && writeJob(read.job)).toBe(writeJob(job));
        conflictCount += conflicts.length;
      }),
      runs,
    );
    expect(conflictCount).toBeGreaterThan(0);
  });

  test("with nothing changed on one side it is the other side", () => {
    fc.assert(
      fc.property(versions(base), ({ mine, theirs }) => {
        expect(mergeJobs(base, base, theirs)).toEqual({ job: theirs, conflicts: [] });
        expect(mergeJobs(base, mine, base)).toEqual({ job: mine, conflicts: [] });
        expect(mergeJobs(base, mine, mine)).toEqual({ job: mine, conflicts: [] });
      }),
      runs,
    );
  });

  test("what one side alone changed survives, or a conflict holds it", () => {
    fc.assert(
      fc.property(versions(base), ({ mine, theirs }) => {
        const { job, conflicts } = mergeJobs(base, mine, theirs);
        for (const list of EDITED_LISTS) {
          const at = (one: Job, id: string): unknown => one[list].find((item) => item.id === id);
          for (const id of new Set([base, mine, theirs].flatMap((o) => o[list].map((i) => i.id)))) {
            if (conflicts.some((one) => one.list === list && one.id === id)) continue;
            const [was, ours, others, is] = [base, mine, theirs, job].map((o) => at(o, id));
            if (sameValue(was, others)) expect(is).toEqual(ours);
            else if (sameValue(was, ours)) expect(is).toEqual(others);
          }
        }
      }),
      runs,
    );
  });

  test("it does not matter who merges with whom, but for which side stays in use", () => {
    let comparedCount = 0;
    fc.assert(
      fc.property(versions(base), ({ mine, theirs }) => {
        const one = mergeJobs(base, mine, theirs);
        const other = mergeJobs(base, theirs, mine);
        const isApart = [...one.conflicts, ...other.conflicts].some(
          ({ kind }) => kind === "not-together",
        );
        if (isApart) return;
        const swapped = other.conflicts.map((conflict) => ({
          ...conflict,
          mine: conflict.theirs,
          theirs: conflict.mine,
        }));
        const without = ({ inUse: _, ...rest }: MergeConflict) => rest;
        expect(one.conflicts.map(without)).toEqual(swapped.map(without));
        const ours = settledFor(one.job, one.conflicts, "mine");
        const same = settledFor(other.job, other.conflicts, "theirs");
        if (ours === null || same === null) return;
        expect(writeJob(ours)).toBe(writeJob(same));
        comparedCount++;
      }),
      runs,
    );
    expect(comparedCount).toBeGreaterThan(5);
  });
});

describe("two people at one machine", () => {
  const wire = single.wires[0]!;

  test("two fields of one wire both survive", () => {
    const mine = mustEdit(single, set("wires", wire.id, "note", "chafed at the headstock"));
    const theirs = mustEdit(single, set("wires", wire.id, "number", "77"));
    const { job, conflicts } = mergeJobs(single, mine, theirs);
    expect(conflicts).toEqual([]);
    expect(job.wires.find(({ id }) => id === wire.id)).toEqual({
      ...wire,
      note: "chafed at the headstock",
      number: "77",
    });
  });

  test("one field set twice is a conflict that holds both; either can be put in use", () => {
    const mine = mustEdit(single, set("wires", wire.id, "note", "mine"));
    const theirs = mustEdit(single, set("wires", wire.id, "note", "theirs"));
    const { job, conflicts } = mergeJobs(single, mine, theirs);
    expect(job.wires.find(({ id }) => id === wire.id)?.note).toBe("theirs");
    expect(conflicts).toEqual([
      {
        kind: "both-changed",
        list: "wires",
        id: wire.id,
        path: ["note"],
        mine: { isAbsent: false, value: "mine" },
        theirs: { isAbsent: false, value: "theirs" },
        inUse: "theirs",
      },
    ]);
    expect(settledFor(job, conflicts, "mine")).toEqual(mine);
    expect(settledFor(job, conflicts, "theirs")).toEqual(theirs);
  });

  test("a length keeps the person who measured it: value and basis are never mixed", () => {
    const measured = { value: 812, basis: "measured", by: "A", date: "2026-03-01" };
    const estimated = { value: 700, basis: "estimated" };
    const mine = mustEdit(single, set("wires", wire.id, "lengthMm", measured));
    const theirs = mustEdit(single, set("wires", wire.id, "lengthMm", estimated));
    const { job, conflicts } = mergeJobs(single, mine, theirs);
    expect(job.wires.find(({ id }) => id === wire.id)?.lengthMm).toEqual(estimated);
    expect(conflicts.map(({ path }) => path)).toEqual([["lengthMm"]]);
  });

  test.each(["mine", "theirs"] as const)(
    "a wire %s removed and the other edited is kept",
    (who) => {
      const removed = mustEdit(single, { op: "remove", list: "wires", id: wire.id });
      const changed = mustEdit(single, set("wires", wire.id, "note", "edited"));
      const [mine, theirs] = who === "mine" ? [removed, changed] : [changed, removed];
      const { job, conflicts } = mergeJobs(single, mine, theirs);
      expect(job.wires.find(({ id }) => id === wire.id)?.note).toBe("edited");
      expect(conflicts).toHaveLength(1);
      expect(conflicts[0]).toMatchObject({ kind: "removed-and-edited", id: wire.id, path: [] });
      expect(conflicts[0]?.[who]).toEqual({ isAbsent: true });
      expect(conflicts[0]?.inUse).not.toBe(who);
      expect(settledFor(job, conflicts, who)).toEqual(removed);
    },
  );

  test("a station removed while the other laid a run to it comes back, and the conflict says so", () => {
    const add = (list: "stations" | "runs", item: unknown): Operation => ({
      op: "add",
      list,
      item,
    });
    const base = mustEdit(single, add("stations", { id: "LONE", name: "Rack" }));
    const near = base.stations.find(({ id }) => id !== "LONE")!.id;
    const mine = mustEdit(base, { op: "remove", list: "stations", id: "LONE" });
    const theirs = mustEdit(base, add("runs", { id: "RLONE", from: near, to: "LONE" }));
    const { job, conflicts } = mergeJobs(base, mine, theirs);
    expect(job).toEqual(theirs);
    expect(conflicts).toMatchObject([{ kind: "not-together", list: "stations", id: "LONE" }]);
    const swapped = mergeJobs(base, theirs, mine);
    expect(swapped.job).toEqual(mine);
    expect(swapped.conflicts).toMatchObject([{ kind: "not-together", list: "runs", id: "RLONE" }]);
  });

  test("one id given to two things holds both, and only what hangs on mine is left out with it", () => {
    const wireOf = (note: string): Operation => ({
      op: "add",
      list: "wires",
      item: { ...wire, id: "WNEW", number: "901", note },
    });
    const mine = mustEdit(single, wireOf("to the horn"));
    const theirs = mustEdit(single, wireOf("to the brake switch"));
    const { job, conflicts } = mergeJobs(single, mine, theirs);
    expect(job).toEqual(theirs);
    expect(conflicts).toMatchObject([{ kind: "both-added", id: "WNEW", path: [] }]);
    expect(settledFor(job, conflicts, "mine")).toEqual(mine);
  });

  test("ways two people add to one joint both stay, with their wires", () => {
    const base = JOBS.find((job) => job.joints.length > 0)!;
    const joint = base.joints[0]!;
    const like = base.wires[0]!;
    const grown = (way: string, id: string): Job =>
      mustEdit(base, {
        op: "batch",
        name: "branch",
        operations: [
          { op: "set", list: "joints", id: joint.id, path: ["ways"], value: [...joint.ways, way] },
          { op: "add", list: "wires", item: { ...like, id, to: `${joint.id}.${way}`, number: id } },
        ],
      });
    const [mine, theirs] = [grown("81", "WM"), grown("9", "WT")];
    const { job, conflicts } = mergeJobs(base, mine, theirs);
    expect(conflicts).toEqual([]);
    const merged = job.joints.find(({ id }) => id === joint.id)!;
    expect(merged.ways).toEqual([...joint.ways, "9", "81"]);
    expect(job.wires.map(({ id }) => id)).toEqual(expect.arrayContaining(["WM", "WT"]));
  });

  test("stations placed by two people on the side view both stay placed", () => {
    const base = jobNamed(single.id);
    const side = base.layout.side ?? {};
    const [first, second] = base.stations.map(({ id }) => id);
    const placed = (id: string, xMm: number): Job =>
      mustEdit(base, {
        op: "set",
        list: "job",
        path: ["layout", "side"],
        value: { ...side, [id]: { xMm, yMm: 1 } },
      });
    const { job, conflicts } = mergeJobs(base, placed(first!, 11), placed(second!, 22));
    expect(conflicts).toEqual([]);
    expect(job.layout.side?.[first!]?.xMm).toBe(11);
    expect(job.layout.side?.[second!]?.xMm).toBe(22);
  });

  test("a list too long with the additions of both takes as many of mine as there is room for", () => {
    const wires = (prefix: string, count: number) =>
      Array.from({ length: count }, (_, i) => ({ ...wire, id: `${prefix}${100_000 + i}` }));
    const base: Job = { ...single, wires: wires("A", 19_998) };
    const mine: Job = { ...base, wires: [...base.wires, ...wires("M", 2)] };
    const theirs: Job = { ...base, wires: [...base.wires, ...wires("T", 1)] };
    const { job, conflicts } = mergeJobs(base, mine, theirs);
    expect(job.wires.slice(-2).map(({ id }) => id)).toEqual(["M100000", "T100000"]);
    expect(conflicts).toMatchObject([{ kind: "not-together", list: "wires", id: "M100001" }]);
  });
});
