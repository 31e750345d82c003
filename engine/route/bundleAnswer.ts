import { packCircles, packingStepCount } from "../geometry/index.ts";
import type { Refusal } from "../messages/index.ts";
import { type Figure, figure } from "../tables/index.ts";
import { type SleeveChoice, sleeveChoices } from "./sleeveChoices.ts";

/** A bundle in section, as `docs/reference/contract` says. */
export interface BundleAnswer {
  readonly wires: readonly { readonly odMm: number; readonly xMm: number; readonly yMm: number }[];
  readonly tightestMm: number;
  readonly lowerBoundMm: number;
  readonly areaBoundMm: number;
  /** Tightest times the larger factor: what a sleeve must pass. */
  readonly asLaidMm: number;
  readonly asLaidLeastMm: number;
  readonly asLaidFactor: number;
  readonly source: string;
  readonly seed: number;
  readonly stepCount: number;
  readonly sleeve: readonly SleeveChoice[];
  readonly bendRadiusMm: {
    readonly fixed: number;
    readonly least: number;
    readonly moving: number;
  };
  readonly figures: readonly Figure[];
}

/** One seed for all bundles, so that the same wires always lie the same. */
const SEED = 1;

/**
 * How thick a bundle is: the tightest packing found, and as a hand lays it, with sleeves that fit and how sharply it bends.
 *
 * @param odsMm  outside diameter of every wire, mm; at least one.
 */
export function bundleOf(odsMm: readonly number[]): BundleAnswer {
  const packed = packCircles({
    diametersMm: odsMm,
    seed: SEED,
    stepCount: packingStepCount(odsMm.length),
  });
  const least = figure("routeRules", "as-laid-least", "value");
  const most = figure("routeRules", "as-laid-most", "value");
  const bends = {
    fixed: figure("loomRules", "bend-fixed", "value"),
    least: figure("loomRules", "bend-absolute", "value"),
    moving: figure("loomRules", "bend-flex", "value"),
  };
  // A single wire is as thick as it is: no hand lays it looser.
  const isBundle = odsMm.length > 1;
  const asLaidFactor = isBundle ? most.value : 1;
  const asLaidMm = packed.tightestMm * asLaidFactor;
  return {
    wires: packed.centres.map((centre, i) => ({ odMm: odsMm[i]!, ...centre })),
    tightestMm: packed.tightestMm,
    lowerBoundMm: packed.lowerBoundMm,
    areaBoundMm: packed.areaBoundMm,
    asLaidMm,
    asLaidLeastMm: packed.tightestMm * (isBundle ? least.value : 1),
    asLaidFactor,
    source: `${most.source}: ${most.place}`,
    seed: packed.seed,
    stepCount: packed.stepCount,
    sleeve: sleeveChoices(asLaidMm),
    bendRadiusMm: {
      fixed: asLaidMm * bends.fixed.value,
      least: asLaidMm * bends.least.value,
      moving: asLaidMm * bends.moving.value,
    },
    figures: [least, most, bends.fixed, bends.least, bends.moving],
  };
}

export type Bundled =
  | { readonly ok: true; readonly answer: BundleAnswer }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

const MOST_WIRE_COUNT = 400;
const MOST_OD_MM = 100;

/**
 * The BUNDLE command: every argument an outside diameter in mm, alone or times a count: `2.1`, `2.8x5`.
 * At most 400 wires; a diameter above nil and up to 100 mm.
 */
export function bundleAnswer(texts: readonly string[]): Bundled {
  const read = texts.map((text, i) => ({ text, pointer: `OD ${i + 1}`, wires: readWires(text) }));
  const refusals = read
    .filter(({ wires }) => wires === null)
    .map(({ text, pointer }) =>
      refused(
        pointer,
        text,
        "is no outside diameter",
        "Write millimetres, and a count: 2.1 or 2.8x5.",
      ),
    );
  const odsMm = read.flatMap(({ wires }) => wires ?? []);
  if (refusals.length === 0 && odsMm.length === 0) {
    refusals.push(
      refused("OD", "", "no wire was given", "Give the outside diameter of each wire."),
    );
  }
  if (odsMm.length > MOST_WIRE_COUNT) {
    const remedy = `Give at most ${MOST_WIRE_COUNT} wires.`;
    refusals.push(refused("OD", `${odsMm.length}`, "wires are more than a bundle holds", remedy));
  }
  if (refusals.length > 0) return { ok: false, refusals };
  return { ok: true, answer: bundleOf(odsMm) };
}

function readWires(text: string): readonly number[] | null {
  const match = /^\s*(\d{1,3}(?:\.\d{1,6})?)\s*(?:[x×*]\s*(\d{1,3}))?\s*$/.exec(text);
  if (match === null) return null;
  const odMm = Number(match[1]);
  const count = match[2] === undefined ? 1 : Number(match[2]);
  if (!(odMm > 0 && odMm <= MOST_OD_MM && count >= 1)) return null;
  return Array.from({ length: count }, () => odMm);
}

function refused(pointer: string, found: string, what: string, remedy: string): Refusal {
  const message = `${found} ${what}.`.trim();
  return { code: "bundle-diameter", pointer, line: null, found, message, remedy };
}
