import type { Job } from "@copperwright/engine";
import { expect, it } from "vitest";
import { liveWords } from "./liveWords.ts";

const job = {
  parts: [
    {
      id: "KEY",
      kind: "switch",
      name: "ignition key",
      positions: [
        { id: "ON", name: "on", joins: [] },
        { id: "PARK", joins: [] },
      ],
    },
  ],
} as unknown as Job;

it("says when, in the names of the switches and their positions", () => {
  expect(liveWords(job, [{ positions: { KEY: ["ON", "PARK"] } }])).toBe(
    "Its loads are to work as its own switches say, with ignition key at on or PARK.",
  );
  expect(
    liveWords(job, [
      { positions: { KEY: ["PARK"], LSW: ["H"] }, flash: "on" },
      { positions: { KEY: ["ON"] } },
    ]),
  ).toContain("ignition key at PARK and LSW at H and the flasher closed; or ignition key at on");
});

it("tells always, never and not told apart", () => {
  expect(liveWords(job, [{ positions: {} }])).toMatch(/always there/);
  expect(liveWords(job, [])).toMatch(/^No battery reaches/);
  expect(liveWords(job, null)).toMatch(/cannot be told/);
});
