import type { FaultStory } from "@copperwright/engine";
import { expect, test } from "vitest";
import { fuseSentence, momentWords } from "./TimeAxis.tsx";

const story = (opensMinS: number | null, opensMaxS: number | null): FaultStory =>
  ({
    first: { part: "F1", ratingA: 15, currentA: -40, opensMinS, opensMaxS },
    stages: [],
  }) as unknown as FaultStory;
const plain = (text: string): string => text.replace(/[\u00a0\u2009]/g, " ");

test("before, within and after the band", () => {
  const said = [0.01, 0.5, 1.5].map((atS) => momentWords(story(0.07, 1.5), atS));
  expect(said).toEqual([
    "at the flag F1 is whole",
    "at the flag F1 may have gone",
    "at the flag F1 has gone",
  ]);
  expect(momentWords(story(0.07, null), 1e6)).toBe("at the flag F1 may have gone");
});

test("which fuse goes and when; one nobody promises, and none at all", () => {
  expect(plain(fuseSentence(story(0.07, 1.5)))).toBe(
    "F1, 15.0 A, carries 40.0 A: it opens between 70 ms and 1.5 s.",
  );
  expect(fuseSentence(story(0.07, null))).toContain("never promised");
  expect(fuseSentence({ ...story(null, null), first: null })).toBe(
    "No fuse opens: nothing ends this by itself.",
  );
});
