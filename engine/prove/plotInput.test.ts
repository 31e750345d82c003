import { readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { readJob } from "../job/index.ts";
import { checkedJob } from "../judge/index.ts";
import { plotInput, plottedJob } from "./plotInput.ts";
import { preparedProof } from "./preparedProof.ts";
import { timeCurrentsOf } from "./timeCurrentOf.ts";

it.each(["aldreth-single", "minazuru-four"])(
  "%s: plots from plain data are those of the checked job",
  (demo) => {
    const path = new URL(`../../demos/${demo}.json`, import.meta.url);
    const read = readJob(readFileSync(path, "utf8"));
    if (!read.ok) throw new Error("the demo reads");
    const checked = checkedJob(read.job);
    const handed = structuredClone(plotInput(preparedProof(checked.design), checked));
    const [own, far] = [timeCurrentsOf(checked), timeCurrentsOf(plottedJob(handed))];
    expect(far.length).toBe(own.length);
    // The network is made anew, so the last digits of a current may differ.
    const text = (plots: unknown): string =>
      JSON.stringify(plots, (_, value) =>
        typeof value === "number" ? Number(value.toPrecision(9)) : value,
      );
    expect(text(far)).toBe(text(own));
  },
);
