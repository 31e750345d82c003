import { printNumber, type SupplyAnswer } from "@copperwright/engine";
import { printTable } from "../printTable.ts";
import { wrapText } from "../wrapText.ts";

const HOUR_S = 3600;
const amps = (currentA: number): string => `${printNumber(currentA, 2)} A`;
const volts = (v: number): string => `${printNumber(v, 2)} V`;

/** Starting and standing in words. */
export function printStarting(answer: SupplyAnswer): string {
  return [crankingOf(answer), standingOf(answer), coilsOf(answer), withoutOf(answer)]
    .filter((part) => part !== "")
    .join("\n\n");
}

function crankingOf({ cranking, noCranking }: SupplyAnswer): string {
  if (cranking === null) return `Cranking was not reckoned: ${noCranking}.`;
  const rows = cranking.rows.map((row) => [
    `${printNumber(row.ambientC, 0)} C`,
    row.demandRatio === 1 ? "warm engine" : `${row.field} field`,
    `${printNumber(row.currentA, 0)} A`,
    volts(row.motorV),
    volts(row.postsV),
    row.coilV === null ? "" : volts(row.coilV),
    row.speedRatio === null ? "" : `${printNumber(100 * row.speedRatio, 0)} %`,
    row.turns ? (row.postsHold ? "" : "posts too low") : "does not turn",
  ]);
  const [warm] = cranking.rows;
  const fall = (warm?.fall ?? []).map((step) => `${step.of} ${volts(step.dropV)}`).join(", ");
  return [
    printTable(["starter", "", "amps", "motor", "posts", "coil", "speed", ""], rows, {
      right: [2, 3, 4, 5, 6],
    }),
    ...(fall === "" ? [] : [wrapText(`Volts warm, from the battery round: ${fall}.`, 100)]),
    ...cranking.cables.map((one) => wrapText(cableText(one), 100)),
    ...cranking.notes,
  ].join("\n");
}

type CableSide = NonNullable<SupplyAnswer["cranking"]>["cables"][number];

function cableText(one: CableSide): string {
  const verdict = one.holds ? "within" : "MORE THAN";
  const larger =
    one.neededMm2 === null
      ? ""
      : ` Copper of ${printNumber(one.neededMm2, 1)} mm2 would bring it inside.`;
  const contacts =
    one.holds || one.neededMm2 !== null
      ? ""
      : " Contacts alone are over it: clean them, copper will not do.";
  return `${one.side === "live" ? "Live lead" : "Earth way"}: ${volts(one.dropV)}, ${verdict} ${volts(one.limitV)}; its thinnest copper, ${printNumber(one.leastMm2, 1)} mm2, stands this for ${printNumber(one.standsS, 0)} s.${larger}${contacts}`;
}

function standingOf({ standing }: SupplyAnswer): string {
  const hours = (timeS: number | null): string => (timeS === null ? "never" : spell(timeS));
  const rows = standing.map((row) => [
    row.name,
    row.currentA < 0.1 ? `${printNumber(1000 * row.currentA, 1)} mA` : amps(row.currentA),
    hours(row.toHalfS),
    hours(row.toEmptyS),
    row.toNoStartS === null ? "" : spell(row.toNoStartS),
  ]);
  return printTable(["left standing", "draws", "to half", "to empty", "may not start"], rows, {
    right: [1, 2, 3, 4],
  });
}

/** Two days and more in days. */
function spell(timeS: number): string {
  const hours = timeS / HOUR_S;
  return hours < 48 ? `${printNumber(hours, 1)} h` : `${printNumber(hours / 24, 0)} days`;
}

function coilsOf({ coilsLeftOn: left }: SupplyAnswer): string {
  if (left === null) return "";
  const coils = left.coils
    .map((one) => `${one.load} ${printNumber(one.powerW, 0)} W at ${volts(one.v)}`)
    .join(", ");
  const flat =
    left.toEmptyS === null
      ? ""
      : ` The battery is flat in ${printNumber(left.toEmptyS / HOUR_S, 1)} h.`;
  return wrapText(
    `Key left on with the contacts closed: ${amps(left.currentA)}. Heat in the coils: ${coils}.${flat}`,
    100,
  );
}

function withoutOf({
  withoutBattery: { allowed, reasons, leastUf, mostUf, leastV, ripple },
}: SupplyAnswer): string {
  const head = allowed
    ? `It may run without a battery, on ${leastUf} to ${mostUf} microfarad at ${leastV} V or more`
    : "It is not to be run without its battery";
  const falls =
    !allowed || ripple === null
      ? ""
      : ` On ${ripple.capacitanceUf} microfarad its volts fall by ${printNumber(ripple.rows[0]!.rippleV, 1)} V between pulses at ${printNumber(Math.ceil(ripple.speedRpm / 10) * 10, 0)} rpm with ${ripple.rows[0]!.polePairCount} pole pairs, by ${printNumber(ripple.rows.at(-1)!.rippleV, 1)} V with ${ripple.rows.at(-1)!.polePairCount}.`;
  return wrapText(`${head}: ${reasons.join("; ")}.${falls}`, 100);
}
