import {
  type BundleAnswer,
  printNumber,
  printQuantity,
  type WireAnswer,
} from "@copperwright/engine";
import { printTable } from "../printTable.ts";
import { wrapText } from "../wrapText.ts";

/** A wire in words: how it was read, its copper, what it carries and by whose figure, what it drops. */
export function printWire(answer: WireAnswer): string {
  const parts = [
    wrapText(`Read as ${answer.readAs}.`, 100),
    areaOf(answer),
    answer.warning === null ? "" : wrapText(answer.warning, 100),
    answer.ask === null ? "" : wrapText(`Please say: ${answer.ask}`, 100),
    ratingsOf(answer),
    dropOf(answer),
    shortOf(answer),
    whyOf(answer),
  ];
  return `${parts.filter((part) => part !== "").join("\n\n")}\n`;
}

function areaOf({
  areaMm2,
  areaRangeMm2,
  strandCount,
  strandDiameterMm,
  ohmPerM20,
}: WireAnswer): string {
  const lines: string[] = [];
  if (areaMm2 !== null) {
    const sum =
      strandCount !== null && strandDiameterMm !== null && strandCount > 1
        ? ` = ${strandCount} × π/4 × ${strandDiameterMm}²`
        : "";
    lines.push(`Copper ${printNumber(areaMm2, 3)} mm²${sum}`);
  }
  if (areaRangeMm2 !== null) {
    const [least, most] = areaRangeMm2;
    lines.push(`Copper between ${printNumber(least, 3)} and ${printNumber(most, 3)} mm²`);
  }
  if (ohmPerM20 !== null)
    lines.push(`${printQuantity(ohmPerM20 * 1000, "mohm")} per metre at 20 °C`);
  return lines.join("\n");
}

function ratingsOf({ ratings, governs, ask }: WireAnswer): string {
  if (ratings.length === 0) return "";
  if (ask !== null) return spreadOf(ratings);
  const rows = ratings.map((rating) => [
    rating.make,
    rating.kind,
    printQuantity(rating.currentA, "A"),
    rating.ambientC === null ? "" : printQuantity(rating.ambientC, "C"),
    rating.confidence,
    rating.basis,
  ]);
  const table = printTable(["make", "figure", "amps", "air", "sure", "basis"], rows, {
    right: [2, 3],
  });
  const last =
    governs === null
      ? ""
      : `\nHere it carries ${printQuantity(governs.currentA, "A")} (${governs.make}, ${governs.basis}).`;
  return `${table}${wrapText(last, 100)}`;
}

/** While the name leaves several makes open their figures are not listed one by one: the least stands. */
function spreadOf(ratings: WireAnswer["ratings"]): string {
  const here = ratings.filter((rating) => rating.kind === "in this place");
  if (here.length === 0) return "";
  const rising = [...here].sort((left, right) => left.currentA - right.currentA);
  const [least, most] = [rising[0]!, rising.at(-1)!];
  const words = `Until then reckon with the least: ${printQuantity(least.currentA, "A")} (${least.make}, ${least.basis}). The makes it may be carry up to ${printQuantity(most.currentA, "A")} here (${most.make}).`;
  return wrapText(words, 100);
}

function dropOf({ drop }: WireAnswer): string {
  if (drop === null) return "";
  const percent = drop.percent === null ? "" : ` (${printNumber(drop.percent, 1)} %)`;
  const way = drop.oneWay ? "one way" : "there and back";
  const limit =
    drop.limitV === null
      ? ""
      : ` ${drop.ok ? "Within" : "MORE THAN"} the ${printQuantity(drop.limitV, "V")} allowed.`;
  return wrapText(
    `Over ${printQuantity(drop.lengthMm, "mm")} ${way} it drops ${printQuantity(drop.v, "V")}${percent}.${limit}`,
    100,
  );
}

/** What could not be answered, unless nobody asked for it. */
const whyOf = ({ why }: WireAnswer): string =>
  why
    .filter((one) => !one.startsWith("drop: give"))
    .map((one) => wrapText(one, 100))
    .join("\n");

const shortOf = ({ adiabaticA2s }: WireAnswer): string =>
  adiabaticA2s === null
    ? ""
    : `A short may put ${printQuantity(adiabaticA2s, "A2s")} through it before the insulation is hurt.`;

/** A bundle in words: tightest, as laid, what fits over it, how sharply it may bend. */
export function printBundle(answer: BundleAnswer): string {
  const mm = (value: number) => `${printNumber(value, 1)} mm`;
  const rows = answer.sleeve.map((sleeve) => [
    sleeve.kind,
    mm(sleeve.sizeMm),
    `${printNumber(sleeve.fillPercent, 0)} %`,
    sleeve.ok ? "fits" : "does not fit",
  ]);
  return `${[
    `${answer.wires.length} wires: ${mm(answer.tightestMm)} at the tightest (never under ${mm(answer.lowerBoundMm)}),`,
    `about ${mm(answer.asLaidMm)} as laid by hand (${answer.asLaidFactor} times; ${answer.source}).`,
    `Bend no sharper than ${mm(answer.bendRadiusMm.fixed)} where fixed, ${mm(answer.bendRadiusMm.least)} at the very least, ${mm(answer.bendRadiusMm.moving)} where it moves.`,
    "",
    printTable(["covering", "inside", "fill", ""], rows, { right: [1, 2] }),
  ].join("\n")}\n`;
}
