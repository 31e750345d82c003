import type { WorkingStep } from "../messages/index.ts";
import { dropLimitOf } from "../size/index.ts";
import type { CheckedJob } from "./checkJob.ts";
import type { CheckWireRow } from "./checkResult.ts";

/** One figure of a wire with the sum behind it. */
export interface WireFact {
  readonly working: WorkingStep;
  /** What it is held against; null: nothing. */
  readonly limit: { readonly value: number; readonly unit: string; readonly whose: string } | null;
  readonly note: string;
}

export interface WireFacts {
  readonly row: CheckWireRow;
  readonly size: WireFact;
  /** Null where its way is not known. */
  readonly cut: WireFact | null;
  /** Null where no current is known of it. */
  readonly carries: WireFact | null;
  readonly loses: WireFact | null;
  /** Stations its way passes, in order. */
  readonly stations: readonly string[];
}

/**
 * What somebody asks of a wire first: how thick, how long to cut, what it carries at most, what it loses then.
 * A = n·π·d²/4; cut = path + allowances; U = I·R'·L with the largest resistance its make may have at 20 °C.
 *
 * @returns null where the plan has no such wire
 */
export function wireFacts({ design, result }: CheckedJob, wire: string): WireFacts | null {
  const row = result.wires.find((one) => one.wire === wire);
  if (row === undefined) return null;
  return {
    row,
    size: sizeFact(row),
    cut: cutFact(row),
    carries: carriesFact(row),
    loses: losesFact(design.job, row),
    stations: design.routed.wires.get(wire)?.stations ?? [],
  };
}

function sizeFact(row: CheckWireRow): WireFact {
  const from = `make ${row.makeId}`;
  return {
    working: {
      name: "copper",
      equation: "A = n x pi / 4 x d^2",
      inputs: [
        { name: "n", value: row.strandCount, unit: "", from },
        { name: "d", value: row.strandDiameterMm, unit: "mm", from },
      ],
      value: row.areaMm2,
      unit: "mm2",
    },
    limit: null,
    note:
      row.sizedBy === "person"
        ? `size entered; ${row.wall} wall, ${row.insulation}, outside ${row.odMm} mm`
        : `size chosen for ${row.governedBy}; ${row.wall} wall, ${row.insulation}`,
  };
}

function cutFact(row: CheckWireRow): WireFact | null {
  if (row.cutMm === null) return null;
  const { path, strip, retermination, flex, trim, rounding, total } = row.cutMm;
  const parts = { path, strip, retermination, flex, trim, rounding };
  const inputs = Object.entries(parts)
    .filter(([name, value]) => name === "path" || value > 0)
    .map(([name, value]) => ({ name, value, unit: "mm", from: `cut list, ${name}` }));
  return {
    working: {
      name: "cut length",
      equation: inputs.map(({ name }) => name).join(" + "),
      inputs,
      value: total,
      unit: "mm",
    },
    limit: null,
    note: `path ${row.lengthBasis ?? "not known"}`,
  };
}

/** The largest current it carries, and how long: for good, or for the seconds the starter turns. */
function largest(
  row: CheckWireRow,
): { a: number; state: readonly string[]; isCranking: boolean } | null {
  const { worstA, worstState, crankingA = 0, crankingState = [] } = row;
  if (crankingA > (worstA ?? 0)) return { a: crankingA, state: crankingState, isCranking: true };
  return worstA === null ? null : { a: worstA, state: worstState, isCranking: false };
}

function carriesFact(row: CheckWireRow): WireFact | null {
  const most = largest(row);
  if (most === null) return null;
  const { a, state, isCranking } = most;
  const when = state.length === 0 ? "no state was found in which it carries" : stateText(state);
  return {
    working: {
      name: isCranking ? "current while the starter turns" : "largest lasting current",
      equation: "I, solved for the state it is largest in",
      inputs: [],
      value: a,
      unit: "A",
    },
    // What it is rated for it may carry for ever; the starter turns for seconds.
    limit: isCranking ? null : { value: row.ratingA, unit: "A", whose: row.ratingBasis },
    note: isCranking ? `for seconds, ${when}` : when,
  };
}

/** `--set KEY=ON` and the like as a person would say it. */
function stateText(args: readonly string[]): string {
  const words = args.flatMap((arg, i) => (args[i - 1] === "--set" ? [arg.replace("=", " ")] : []));
  const battery = args[args.indexOf("--battery") + 1];
  const at = args.includes("--battery") && battery !== undefined ? `, battery ${battery} V` : "";
  return words.length === 0 ? `everything at rest${at}` : `with ${words.join(", ")}${at}`;
}

function losesFact(job: CheckedJob["design"]["job"], row: CheckWireRow): WireFact | null {
  const most = largest(row);
  if (most === null || row.pathMm === null) return null;
  const lengthM = row.pathMm / 1000;
  const circuit = job.circuits.find(({ id }) => id === row.circuit);
  const limit = circuit === undefined ? null : dropLimitOf(job, circuit.dropClass);
  return {
    working: {
      name: "volts lost along it",
      equation: "U = I x R' x L",
      inputs: [
        {
          name: "I",
          value: most.a,
          unit: "A",
          from: most.isCranking ? "while the starter turns" : "largest lasting current",
        },
        { name: "R'", value: row.ohmPerM, unit: "ohm/m", from: `make ${row.makeId}, at 20 C` },
        { name: "L", value: lengthM, unit: "m", from: "its way through the loom" },
      ],
      value: most.a * row.ohmPerM * lengthM,
      unit: "V",
    },
    limit:
      limit === null
        ? null
        : {
            value: limit.limitV,
            unit: "V",
            whose: limit.decided
              ? `yours for ${limit.dropClass}, there and back`
              : `${limit.dropClass}, there and back; ${limit.limit.source}, ${limit.limit.confidence}`,
          },
    note: `lengths ${row.lengthBasis ?? "not known"}`,
  };
}
