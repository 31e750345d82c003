import { describe, expect, test } from "vitest";
import type { Operation } from "../../engine/job/index.ts";
import { checkJob } from "../../engine/judge/index.ts";
import { machine, only } from "./jobs.ts";

const runLength = (id: string, value?: number): Operation => ({
  op: "set",
  list: "runs",
  id,
  path: ["lengthMm"],
  ...(value === undefined ? {} : { value: { value, basis: "measured" } }),
});

/** Typed lengths of the wires that lie in a run taken away, so that the run's own length counts. */
const routed = (job: ReturnType<typeof machine>): readonly Operation[] =>
  job.wires.map(({ id }) => ({ op: "set", list: "wires", id, path: ["lengthMm"] }));

/** N07: the same kind of run entered as 1.6, 160 and 1600, and one run not at all. */
describe("N07: units mixed up and a length missing", () => {
  const edits = [
    runLength("BC-BL", 1.6),
    runLength("BC-BR", 160),
    runLength("HL-BC", 1600),
    runLength("UT-SP"),
  ];
  const result = checkJob(machine("c", ...edits, ...routed(machine("c"))));

  test("each suspicious value is asked about, with how it may be read", () => {
    const short = only(result, "length-doubtful-shorter-than-a-connector", "BC-BL");
    expect(short.message).toContain("shorter than a connector");
    expect(short.remedies.map(({ newNumbers }) => newNumbers.readMm)).toContain(1600);
    const middle = only(result, "length-doubtful-same-figures", "BC-BR");
    expect(middle.remedies.map(({ newNumbers }) => newNumbers.readMm)).toContain(1600);
    const long = only(result, "length-doubtful-same-figures", "HL-BC");
    expect(long.remedies.map(({ newNumbers }) => newNumbers.readMm)).toContain(160);
  });

  test("a missing length makes its wires unknown, never nothing", () => {
    const missing = only(result, "length-unknown-run-not-measured", "UT-SP");
    expect(missing.also).toContain("C08");
    expect(result.lengthsComplete).toBe(false);
    const wire = result.wires.find((one) => one.wire === "C08")!;
    expect([wire.pathMm, wire.cutMm]).toEqual([null, null]);
    expect(wire.why).toBeDefined();
    const head = result.loads.find(({ load }) => load === "HEAD:LO-E")!;
    expect(head.worstDropV).toBeNull();
    expect(head.why).toBeDefined();
  });
});
