import type { Refusal } from "../messages/index.ts";
import type { RideStep } from "./rideSteps.ts";

const HEADINGS = "timeS,speedRpm,lights";
const MOST_RPM = 20_000;

/**
 * A rider's own trace: a heading line `timeS,speedRpm` or `timeS,speedRpm,lights`, then one line a moment with rising times. Each line
 * holds until the next; the last ends the ride. `lights` is the id of a lighting state, or `off` for parked.
 *
 * @param states   ids of the lighting states.
 * @param usual    the state where the trace has no `lights` column.
 */
export function readTrace(
  text: string,
  states: readonly string[],
  usual: string,
):
  | { readonly ok: true; readonly steps: readonly RideStep[] }
  | { readonly ok: false; readonly refusals: readonly Refusal[] } {
  const lines = text.replace(/^\uFEFF/, "").split(/\r?\n/);
  const heading = (lines[0] ?? "").replaceAll(" ", "");
  if (heading !== HEADINGS && heading !== "timeS,speedRpm") {
    const message = "A trace begins with the line of its headings.";
    return refused(1, lines[0] ?? "", message, `Write ${HEADINGS} or timeS,speedRpm.`);
  }
  const moments: { timeS: number; speedRpm: number; state: string | null }[] = [];
  for (const [k, line] of lines.entries()) {
    if (k === 0 || line.trim() === "") continue;
    const [time = "", speed = "", lights = usual] = line.split(",").map((cell) => cell.trim());
    const [timeS, speedRpm] = [numberOf(time), numberOf(speed)];
    const wrong = wrongIn(timeS, speedRpm, moments.at(-1)?.timeS ?? null);
    if (wrong !== null)
      return refused(k + 1, line, wrong, "Write seconds and revolutions a minute.");
    if (lights !== "off" && !states.includes(lights)) {
      return refused(
        k + 1,
        lights,
        "There is no lighting state of that name.",
        `Write off, or one of: ${states.join(", ")}.`,
      );
    }
    moments.push({ timeS, speedRpm, state: lights === "off" ? null : lights });
  }
  if (moments.length < 2) {
    return refused(
      null,
      text.slice(0, 40),
      "A trace needs at least two moments.",
      "Add a last line that ends the ride.",
    );
  }
  const steps = moments.slice(1).map(({ timeS }, k) => {
    const from = moments[k]!;
    return { durationS: timeS - from.timeS, speedRpm: from.speedRpm, state: from.state };
  });
  return { ok: true, steps };
}

const numberOf = (cell: string): number => (cell === "" ? Number.NaN : Number(cell));

function wrongIn(timeS: number, speedRpm: number, beforeS: number | null): string | null {
  if (!Number.isFinite(timeS) || !Number.isFinite(speedRpm)) return "That is not a number.";
  if (speedRpm < 0 || speedRpm > MOST_RPM) return "No engine of a motorcycle turns like that.";
  if (beforeS !== null && timeS <= beforeS) return "The time does not rise.";
  return null;
}

function refused(line: number | null, found: string, message: string, remedy: string) {
  const one: Refusal = { code: "trace", pointer: "trace", line, found, message, remedy };
  return { ok: false as const, refusals: [one] };
}
