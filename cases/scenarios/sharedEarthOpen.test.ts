import { expect, test } from "vitest";
import { checkJob } from "../../engine/judge/index.ts";
import { machine } from "./jobs.ts";

/**
 * N04: the rear earth C81 of the four broken, left indicator flashing, lights off: the tail lamp glows. With constant-resistance
 * lamps at 18 % of its power, with the shipped lamp law at about 31 %. The network's figures stand in
 * cases/reference-machines; here, that the check names sign and suspect before anything breaks.
 */
test("N04: the check tells what a broken rear earth looks like, and names the wire", () => {
  const { findings } = checkJob(machine("c"));
  const rear = findings.find(
    ({ code, subject, also }) =>
      code === "shared-earth-lights-others" && [subject.id, ...also].includes("C81"),
  );
  expect(rear?.severity).toBe("advise");
  expect(rear?.numbers.stray).toMatch(/^REAR:TAIL-E at 3[0-2] %$/);
  expect(rear?.state).toMatchObject({ KEY: "ON", flash: "on" });
  expect(rear?.reproduce).toContain("--open");
  expect(rear?.message).toContain("suspect this wire first");
});
