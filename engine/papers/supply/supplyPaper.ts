import {
  type AreaMm,
  type Block,
  headingBlock,
  keyValueBlocks,
  type Mark,
  paragraphBlocks,
} from "../../drawing/index.ts";
import { type SupplyAnswer, supplyAnswer } from "../../supply/index.ts";
import { printNumber, printQuantity } from "../../units/index.ts";
import type { PackPaper } from "../packPaper.ts";
import type { PaperInput } from "../paperInput.ts";
import { blockSheets } from "../sheets.ts";
import { balancePlot } from "./balancePlot.ts";
import { fallBlocks } from "./fallPlot.ts";
import { heatBlocks, rippleBlocks } from "./heatBlocks.ts";
import { placeNames } from "./placeNames.ts";
import { ridePlot } from "./ridePlot.ts";
import { supplyRows } from "./supplyRows.ts";
import { coilBlocks, figureBlocks, lampBlocks, standingBlocks } from "./supplyTables.ts";

const PLOT_MM = 78;
/** Rides longer than this have a plot of their own scale elsewhere: they would flatten the others. */
const SHORT_RIDE_S = 2 * 3600;
/** Plots of lighting states on paper; the rest is in the rows. */
const MOST_PLOTS = 4;
const ALIKE_RATIO = 0.02;

/** Will it charge, will it start, will it last: plots first, then tables. Left out where a machine has no battery. */
export function supplyPaper(input: PaperInput, name: string): PackPaper {
  const none: PackPaper = { name, title: "Supply", sheets: [], rows: null, drawings: null };
  if (!input.job.parts.some(({ kind }) => kind === "battery")) return none;
  const answer = supplyAnswer(input.job, input.design.conductors);
  const head = {
    title: "Supply",
    lead: "Charging, starting and standing, reckoned from the network of this machine at the means of what draws part of the time.",
  };
  const plan = { documentName: "supply", orientation: "portrait" as const, head };
  const sheets = blockSheets(input, plan, (content) => supplyBlocks(input, answer, content));
  return { ...none, sheets, rows: supplyRows(answer) };
}

function supplyBlocks(input: PaperInput, answer: SupplyAnswer, content: AreaMm): readonly Block[] {
  const { widthMm } = content;
  return [
    ...sourceBlocks(answer, widthMm),
    ...balanceBlocks(answer, widthMm),
    ...rideBlocks(answer, widthMm),
    ...startBlocks(input, answer, widthMm),
    ...lampFallBlocks(input, answer, widthMm),
    ...coilBlocks(answer, content),
    ...standingBlocks(answer, content),
    ...lampBlocks(answer, content),
    ...heatBlocks(answer, content),
    ...rippleBlocks(answer, content),
    ...figureBlocks(answer, content),
  ];
}

function sourceBlocks({ sources }: SupplyAnswer, widthMm: number): readonly Block[] {
  const facts = sources.flatMap((source): (readonly [string, string])[] => {
    if (source.ceilingA === null || source.cutInRpm === null) {
      const why = `${source.why}: give its amps at two speeds, and the plots appear`;
      return [[source.generator, why]];
    }
    const held =
      source.heldV === null
        ? "unregulated"
        : `held at ${printQuantity(source.heldV, "V")} at the battery`;
    const heat = source.isShunt
      ? "; its regulator shorts the winding, so the stator carries this whatever is switched off"
      : "";
    return [
      [
        source.generator,
        `nothing below ${printNumber(Math.ceil(source.cutInRpm / 10) * 10, 0)} rpm, never more than ${printQuantity(source.ceilingA, "A")}, known to ${printNumber(source.bandPercent, 0)} %; ${held}${heat}${source.note === null ? "" : `. ${source.note}`}`,
      ],
    ];
  });
  return [...headingBlock("What charges", widthMm, 2), ...keyValueBlocks(facts, widthMm)];
}

const plotBlock = (widthMm: number, draw: (whole: AreaMm) => readonly Mark[]): Block => ({
  heightMm: PLOT_MM,
  marks: draw({ xMm: 0, yMm: 0, widthMm, heightMm: PLOT_MM }),
  gapAfterMm: 3,
});

function balanceBlocks({ balances }: SupplyAnswer, widthMm: number): readonly Block[] {
  const drawn = balances.filter(({ rows }) => rows.length > 0);
  const falling = drawn.toSorted((a, b) => b.demandA - a.demandA);
  // States that draw alike have the same plot.
  const told = falling.filter(
    ({ demandA }, k) => k === 0 || demandA < (1 - ALIKE_RATIO) * falling[k - 1]!.demandA,
  );
  return told
    .slice(0, MOST_PLOTS)
    .flatMap((balance) => [
      ...headingBlock(`Amps against speed: ${balance.name}`, widthMm, 2),
      plotBlock(widthMm, (whole) => balancePlot(balance, whole)),
      ...paragraphBlocks(balanceWords(balance), widthMm),
    ]);
}

function balanceWords(balance: SupplyAnswer["balances"][number]): string {
  const rpm = (value: number | null): string =>
    value === null ? "no speed looked at" : `${printNumber(Math.ceil(value / 10) * 10, 0)} rpm`;
  if (balance.balanceRpm === null) return "At no speed looked at does it give what is drawn.";
  return `The ammeter stands at nought at ${rpm(balance.balanceRpm)}; with the source at the ends of its band at ${rpm(balance.balanceLowRpm)} or ${rpm(balance.balanceHighRpm)}. Below it the battery gives what is missing.`;
}

function rideBlocks({ rides, noRides }: SupplyAnswer, widthMm: number): readonly Block[] {
  if (noRides !== null) {
    return paragraphBlocks(`No ride was reckoned: ${noRides}.`, widthMm);
  }
  const short = rides.filter(({ durationS }) => durationS <= SHORT_RIDE_S);
  const long = rides.filter(({ durationS }) => durationS > SHORT_RIDE_S);
  return [short, long]
    .filter((some) => some.length > 0)
    .flatMap((some) => [
      ...headingBlock(
        `Charge over the ride: ${some.map(({ ride }) => ride).join(", ")}`,
        widthMm,
        2,
      ),
      plotBlock(widthMm, (whole) => ridePlot(some, whole)),
    ]);
}

function startBlocks(
  { job }: PaperInput,
  { cranking, noCranking }: SupplyAnswer,
  widthMm: number,
): readonly Block[] {
  if (cranking === null) {
    const words =
      noCranking === "no starter"
        ? "It is kicked over: there is no starter."
        : `Starting was not reckoned: ${noCranking}.`;
    return paragraphBlocks(words, widthMm);
  }
  const nameOf = placeNames(job);
  return cranking.rows
    .filter(({ field }, k) => k === 0 || field === "magnet")
    .flatMap((row) => [
      ...headingBlock(
        `Volts while the starter turns, ${printNumber(row.ambientC, 0)} °C, ${printNumber(row.currentA, 0)} A`,
        widthMm,
        2,
      ),
      ...fallBlocks(row.fall, nameOf, widthMm),
      ...paragraphBlocks(startWords(row), widthMm),
    ]);
}

function startWords(row: NonNullable<SupplyAnswer["cranking"]>["rows"][number]): string {
  const coil = row.coilV === null ? "" : ` The ignition gets ${printQuantity(row.coilV, "V")}.`;
  const turns = row.turns
    ? row.speedRatio === null || row.demandRatio === 1
      ? ""
      : ` It turns at ${printNumber(100 * row.speedRatio, 0)} % of its warm speed.`
    : " It does not turn.";
  const field =
    row.demandRatio === 1 ? "" : " A starter with magnets; one with a series field fares better.";
  return `The posts stand at ${printQuantity(row.postsV, "V")}.${coil}${turns}${field}`;
}

function lampFallBlocks(
  { job }: PaperInput,
  { lampFall }: SupplyAnswer,
  widthMm: number,
): readonly Block[] {
  if (lampFall === null) return [];
  const title = `Volts from the battery to the ${lampFall.name} and back, ${printQuantity(lampFall.postsV, "V")} at the posts`;
  return [
    ...headingBlock(title, widthMm, 2),
    ...fallBlocks(lampFall.fall, placeNames(job), widthMm),
    ...paragraphBlocks(`Lit as in: ${lampFall.state}.`, widthMm),
  ];
}
