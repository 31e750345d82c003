import { printAwg, printQuantity, type WireNameRefusal } from "../units/index.ts";
import type { WiresRow } from "./allTables.generated.ts";

/** Sentences about how a wire's name was read. Only words: every number comes from the caller. */

const area = (areaMm2: number): string => printQuantity(areaMm2, "mm2");
const range = ([from, to]: readonly [number, number]): string => `${area(from)} to ${area(to)}`;

/** A strand's diameter without the dust of floating point: 0.3048, 0.2. */
const exact = (mm: number): string => String(Number(mm.toFixed(5)));

/** The names of up to five makes, and how many more. */
function names(rows: readonly WiresRow[]): string {
  const shown = rows.slice(0, 5).map((row) => row.tradeName);
  const more = rows.length - shown.length;
  const list = shown.join(", ");
  return more > 0 ? `${list} and ${more} more` : list;
}

export const readAsWords = {
  strands: (
    strandCount: number,
    strandMm: number,
    areaMm2: number,
    rows: readonly WiresRow[],
  ): string =>
    `${strandCount} strands of ${exact(strandMm)} mm: ${strandCount} × π × ${exact(strandMm)}² / 4 = ${areaMm2.toFixed(3)} mm²${rows.length === 0 ? "" : `, sold as ${names(rows)}`}`,
  strandsSwg: (strandCount: number, gauge: string, strandMm: number, areaMm2: number): string =>
    `${strandCount} strands of ${gauge} SWG, each ${strandMm.toFixed(3)} mm: ${areaMm2.toFixed(3)} mm²`,
  area: (areaMm2: number): string => `copper area ${area(areaMm2)} as sold`,
  awg: (gaugeIndex: number, areaMm2: number): string =>
    `${printAwg(gaugeIndex)} AWG by definition: ${areaMm2.toFixed(3)} mm² of solid copper`,
  vehicleGauge: (gaugeIndex: number, areaMm2: number): string =>
    `vehicle cable of ${printAwg(gaugeIndex)} gauge: at least ${areaMm2.toFixed(3)} mm² by SAE`,
  gauge: (gaugeIndex: number): string => `gauge ${printAwg(gaugeIndex)}, American or British`,
  swg: (gauge: string, diameterMm: number, areaMm2: number): string =>
    `one solid wire of ${gauge} SWG, ${diameterMm.toFixed(3)} mm: ${areaMm2.toFixed(3)} mm²`,
  auto: (sizeMm: number): string =>
    `"${sizeMm} mm auto" trade size: the name is not the copper and not the diameter`,
  copper: (diameterMm: number, mm2: readonly [number, number]): string =>
    `twisted copper ${diameterMm} mm across: ${range(mm2)}, as tightly or loosely as strands pack`,
  insulation: (diameterMm: number): string => `${diameterMm} mm over the insulation`,
  make: (rows: readonly WiresRow[]): string => `make by its letters: ${names(rows)}`,
};

export const askWords = {
  whichMake: (rows: readonly WiresRow[]): string =>
    `Which is it: ${names(rows)}? Count the strands and measure one.`,
  strandsOrShorthand: (strandCount: number, hundredths: string): string =>
    `Is each strand ${hundredths} SWG, or 0.${hundredths} mm (${strandCount}/0.${hundredths})? Measure one strand.`,
  vehicleOrDefinition: (leastMm2: number): string =>
    `Is it vehicle cable? Then it may hold only ${area(leastMm2)}. Count the strands and measure one.`,
  whoseGauge: (awgMm2: number, leastMm2: number | null, swgMm2: number | null): string =>
    `American gauge (${area(awgMm2)}${leastMm2 === null ? "" : `, vehicle cable as little as ${area(leastMm2)}`})${swgMm2 === null ? "" : ` or British SWG (${area(swgMm2)})`}?`,
  autoDiffers: (mm2: readonly [number, number]): string =>
    `Sellers put ${range(mm2)} in this size. Count the strands and measure one.`,
  countStrands: (rows: readonly WiresRow[]): string =>
    rows.length === 0
      ? "How many strands has it, and how thick is one?"
      : `Perhaps ${names(rows)}. How many strands has it, and how thick is one?`,
  underInsulation: (rows: readonly WiresRow[]): string =>
    rows.length === 0
      ? "No make in the tables has this diameter. Strip it: how many strands, how thick is one?"
      : `It could be ${names(rows)}. Strip it: how many strands, how thick is one?`,
  whichSize: (rows: readonly WiresRow[]): string => `Which size: ${names(rows)}?`,
};

export const warnWords = {
  auto: "Judge this wire by its copper: the millimetres in its name are neither area nor diameter.",
  solid: "A solid wire breaks where it shakes: no wire for a vehicle.",
  vehicleCable: "Vehicle cable of a gauge holds less copper than the gauge by definition.",
};

type Words = { readonly message: string; readonly remedy: string };
const ways = "Write it as 32/0.20, 14/.012 in, 1 mm2, 16 AWG, 4 mm auto, copper 1.2 mm or GXL 16.";

export const refusalWords: Readonly<
  Record<WireNameRefusal | "no-such-make" | "no-such-gauge", Words>
> = {
  unread: { message: "This is no name of a wire that can be read.", remedy: ways },
  "too-long": { message: "The text is too long to be the name of a wire.", remedy: ways },
  "area-or-diameter": {
    message: "Millimetres of what? Copper area, copper diameter, or over the insulation?",
    remedy: "Write 2 mm2, copper 2 mm, over insulation 2 mm, or 2 mm auto.",
  },
  "bare-number": {
    message: "A number alone could be an area, a diameter or a gauge.",
    remedy: "Write 1.5 mm2, copper 1.5 mm, over insulation 1.5 mm or 16 AWG.",
  },
  "strand-unit": {
    message: "This strand could be in millimetres or in inches.",
    remedy: "Write the unit: 7/.064 in, or 7/0.064 mm.",
  },
  "strand-bounds": {
    message: "No cable of a vehicle has so many strands, or strands of that size.",
    remedy: "Write the number of strands, a stroke, and one strand's diameter: 32/0.20.",
  },
  "size-bounds": {
    message: "No wire of a vehicle has this size.",
    remedy: "Check the number and its unit.",
  },
  "no-such-make": {
    message: "The tables hold no such make or size.",
    remedy: "Count the strands and measure one, then write them: 32/0.20.",
  },
  "no-such-gauge": {
    message: "The tables hold no such gauge.",
    remedy: "Measure the copper and write its diameter: copper 1.2 mm.",
  },
};
