import { describe, expect, test } from "vitest";
import { pinsOf } from "../job/index.ts";
import { benchConductors, benchJob } from "./benchForTests.ts";
import { operateJob } from "./operateJob.ts";
import type { OperateRequest } from "./operateResult.ts";
import { spiceElement } from "./spiceElement.ts";
import { spiceText } from "./spiceText.ts";

const job = benchJob();
const conductors = benchConductors(job);

function textOf(request: OperateRequest, relays: "settled" | "live" = "settled"): string {
  const answer = spiceText(job, conductors, request, { relays });
  if (!answer.ok) throw new Error("refused");
  return answer.text;
}

describe("simulator text", () => {
  const request: OperateRequest = {
    set: { SW: "ON" },
    short: [{ a: "J.3", ohm: 1 }],
    open: ["W9"],
    extraOhm: { W4: 0.3 },
  };
  const text = textOf(request);
  const answer = operateJob(job, conductors, request);
  if (!answer.ok) throw new Error("refused");
  const { solution } = answer;

  test("is plain ASCII with the state in full", () => {
    expect([...text].every((letter) => letter === "\n" || (letter >= " " && letter <= "~"))).toBe(
      true,
    );
    expect(text.startsWith("* copperwright spice 1, job ")).toBe(true);
    const json = [...text.matchAll(/^\*@state (.*)$/gm)].map(([, part]) => part).join("");
    expect(JSON.parse(json)).toEqual(solution.state);
  });

  test("names every pin of the job once, on the node operate gives it", () => {
    const named = [...text.matchAll(/^\*@pin (\S+) (\S+)$/gm)].map(([, pin, node]) => [pin, node]);
    expect(named.map(([pin]) => pin).sort()).toEqual([...pinsOf(job).keys()].sort());
    expect(named).toEqual(solution.pins.map(({ pin, node }) => [pin, node]));
  });

  test("has the elements of operate, and a device of the same name for each", () => {
    const elements = [...text.matchAll(/^\*@element (\S+) (\S+) (\S+) (\S+) (\S+)$/gm)].map((m) =>
      m.slice(1),
    );
    expect(elements).toEqual(
      solution.elements.map(({ id, kind, of, nodes }) => [id, kind, of, ...nodes]),
    );
    for (const { id } of solution.elements) expect(text).toMatch(new RegExp(`^${id} `, "m"));
  });

  test("lets the simulator work the relays where asked", () => {
    const live = textOf({ set: { SW: "ON" } }, "live");
    expect(live).toMatch(/^S\d+ n\d+ n\d+ c0 0 pull0 OFF$/m);
    expect(textOf({ held: ["REL"] }, "live")).toMatch(/^S\d+ n\d+ n\d+ c0 0 pull0 ON$/m);
    // 12 V system, 0.6 and 0.2 of it: on above 7.2 V, off below 2.4 V.
    expect(live).toMatch(/^\.model pull0 sw vt=4\.8\d* vh=2\.(4|3999)\d* /m);
    expect(text).not.toMatch(/^S/m);
  });
});

describe("one element", () => {
  test("a source keeps its EMF above 0 and turns its nodes on a positive-earth machine", () => {
    const law = { kind: "emf", emfV: 6.3, internalOhm: 0.03 } as const;
    expect(spiceElement("V7", [0, 4], law)).toEqual(["V7 x7 n4 6.3", "R7 x7 0 0.03"]);
    expect(spiceElement("V7", [4, 0], law)).toEqual(["V7 x7 0 6.3", "R7 x7 n4 0.03"]);
  });

  test("a curve is written as its straight lines", () => {
    const points = [
      [0, -4],
      [2, -3],
      [3, 0],
    ] as const;
    expect(spiceElement("B3", [1, 2], { kind: "curve", points })).toEqual([
      "B3 n1 n2 I=(-4)+(0.5)*(v(n1,n2)-(0))+(2.5)*uramp(v(n1,n2)-(2))",
    ]);
  });
});
