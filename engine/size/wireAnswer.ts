import type { Refusal, WorkingStep } from "../messages/index.ts";
import { figure, resolveWire, type WireReading } from "../tables/index.ts";
import { adiabaticOf } from "./wireAdiabatic.ts";
import { type WireDrop, wireDropOf } from "./wireDropOf.ts";
import { type WireRatingRow, wireRatings } from "./wireRatings.ts";

export interface WireQuestion {
  readonly ampsA?: number;
  /** Supply volts, for the per cent and the usual limit. */
  readonly volts?: number;
  readonly lengthM?: number;
  /** True: the length is all of it; absent or false: there and back. */
  readonly oneWay?: boolean;
  /** Limit of the drop, volts or per cent of `volts`. */
  readonly drop?: { readonly limitV: number } | { readonly limitPercent: number };
  readonly ambientC?: number;
  /** Wires lying together, all loaded; absent: one alone. */
  readonly bundle?: number;
}

/** The WIRE answer, as `docs/reference/contract` says. Unknown is null, with `why`. */
export interface WireAnswer {
  readonly input: string;
  readonly readAs: string;
  readonly areaMm2: number | null;
  readonly areaRangeMm2: readonly [number, number] | null;
  readonly strandCount: number | null;
  readonly strandDiameterMm: number | null;
  readonly ask: string | null;
  readonly warning: string | null;
  /** Of what holds least copper among what it can be. */
  readonly ohmPerM20: number | null;
  readonly ratings: readonly WireRatingRow[];
  /** The lowest of the ratings for this place; null where none is known. */
  readonly governs: WireRatingRow | null;
  readonly adiabaticA2s: number | null;
  readonly drop: WireDrop | null;
  readonly why: readonly string[];
  readonly working: readonly WorkingStep[];
}

export type WireAnswered =
  | { readonly ok: true; readonly answer: WireAnswer }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/**
 * What a wire named in any of the trade's ways is, carries and drops. Where the name leaves several makes open every one
 * is rated and the least stands: least copper, most ohms, lowest rating; the question to put is in `ask`.
 */
export function wireAnswer(text: string, question: WireQuestion = {}): WireAnswered {
  const reading = resolveWire(text);
  const refusals = [...wrongReading(reading), ...wrongNumbers(question)];
  if (refusals.length > 0) return { ok: false, refusals };
  const leastMm2 = leastAreaMm2(reading);
  const ohmPerM20 = ohmPerMetre(reading, leastMm2);
  const ambientC = question.ambientC ?? figure("designAmbients", "open-frame", "value").value;
  const ratings = wireRatings(reading.candidates, ambientC, question.bundle ?? 1);
  const inPlace = ratings.rows.filter(({ kind }) => kind === "in this place");
  const governs = inPlace.length === 0 ? null : inPlace.reduce(lower);
  const adiabatic = adiabaticOf(reading.candidates, leastMm2);
  const drop = ohmPerM20 === null ? null : wireDropOf(ohmPerM20, question);
  return {
    ok: true,
    answer: {
      input: reading.input,
      readAs: reading.readAs,
      areaMm2: reading.areaMm2,
      areaRangeMm2: reading.areaRangeMm2,
      strandCount: reading.strandCount,
      strandDiameterMm: reading.strandDiameterMm,
      ask: reading.ask,
      warning: reading.warning,
      ohmPerM20,
      ratings: ratings.rows,
      governs,
      adiabaticA2s: adiabatic?.value ?? null,
      drop: drop?.drop ?? null,
      why: whyNot(reading, { governs, drop: drop?.drop ?? null, ohmPerM20 }),
      working: [...(drop?.working ?? []), ...(adiabatic?.working ?? []), ...ratings.working],
    },
  };
}

const lower = (a: WireRatingRow, b: WireRatingRow): WireRatingRow =>
  b.currentA < a.currentA ? b : a;

/** Least copper among what the wire can be, mm². */
function leastAreaMm2({ areaMm2, areaRangeMm2 }: WireReading): number | null {
  return areaRangeMm2?.[0] ?? areaMm2;
}

function ohmPerMetre({ candidates, areaMm2 }: WireReading, leastMm2: number | null): number | null {
  const published = candidates.flatMap(({ maxOhmPerKm20 }) => maxOhmPerKm20 ?? []);
  const isWhole = published.length === candidates.length && candidates.length > 0;
  if (isWhole && areaMm2 !== null) return Math.max(...published) / 1000;
  if (leastMm2 === null) return null;
  const over = figure("copper", "typical-over-pure", "value").value;
  const computed = (over * figure("copper", "resistivity-20", "value").value * 1e6) / leastMm2;
  return Math.max(computed, ...published.map((perKm) => perKm / 1000));
}

function whyNot(
  reading: WireReading,
  known: {
    readonly governs: WireRatingRow | null;
    readonly drop: WireDrop | null;
    readonly ohmPerM20: number | null;
  },
): readonly string[] {
  const why: string[] = [];
  if (reading.areaMm2 === null) why.push("areaMm2: the name leaves several areas open");
  if (known.governs === null) {
    why.push("ratings: no make of that copper is known, so neither wall nor class of insulation");
  }
  if (known.drop === null && known.ohmPerM20 !== null) why.push("drop: give amps and length");
  return why;
}

function wrongReading({ refusal, input }: WireReading): readonly Refusal[] {
  if (refusal === null) return [];
  const { code, message, remedy } = refusal;
  return [{ code, pointer: "DESCRIPTION", line: null, found: input, message, remedy }];
}

/** Bounds of what may be asked: far outside any machine, so that a slip of the key is met. */
const BOUNDS = {
  ampsA: [0, 5000, "--amps"],
  volts: [0.1, 400, "--volts"],
  lengthM: [0, 1000, "--length"],
  ambientC: [-60, 250, "--ambient"],
  bundle: [1, 400, "--bundle"],
} as const;

function wrongNumbers(question: WireQuestion): readonly Refusal[] {
  const names = Object.keys(BOUNDS) as (keyof typeof BOUNDS)[];
  const wrong = names.flatMap((name) => {
    const value = question[name];
    const [least, most, pointer] = BOUNDS[name];
    const isWhole = name !== "bundle" || Number.isInteger(value);
    if (value === undefined || (value >= least && value <= most && isWhole)) return [];
    return [outOfBounds(pointer, value, `Give a number from ${least} to ${most}.`)];
  });
  const { drop } = question;
  if (drop === undefined) return wrong;
  const limit = "limitV" in drop ? drop.limitV : drop.limitPercent;
  if (!(limit > 0 && limit <= 100)) wrong.push(outOfBounds("--drop", limit, "Give 0.3V or 3%."));
  if ("limitPercent" in drop && question.volts === undefined) {
    wrong.push(outOfBounds("--drop", limit, "A per cent needs --volts."));
  }
  return wrong;
}

function outOfBounds(pointer: string, value: number, remedy: string): Refusal {
  const found = `${value}`;
  const message = `${found} cannot be worked with here.`;
  return { code: "wire-number", pointer, line: null, found, message, remedy };
}
