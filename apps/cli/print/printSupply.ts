import { type Job, printNumber, type SupplyAnswer } from "@copperwright/engine";
import { printTable } from "../printTable.ts";
import { wrapText } from "../wrapText.ts";
import { printStarting } from "./printStarting.ts";

const HOUR_S = 3600;

const amps = (currentA: number): string => `${printNumber(currentA, 2)} A`;
const volts = (v: number): string => `${printNumber(v, 2)} V`;
const rpm = (speedRpm: number | null): string =>
  speedRpm === null ? "none" : `${printNumber(Math.ceil(speedRpm / 10) * 10, 0)}`;

/** Every supply answer in words, worst question first. `unchanged` is the same machine without what somebody thinks of adding. */
export function printSupply(
  job: Job,
  answer: SupplyAnswer,
  unchanged: SupplyAnswer | null,
): string {
  const parts = [
    wrapText(`${job.name}, revision ${job.revision}`, 100),
    sourcesOf(answer),
    balanceOf(answer, unchanged),
    speedsOf(answer),
    ridesOf(answer),
    heatOf(answer),
    excitationOf(answer),
    coilBalanceOf(answer),
    printStarting(answer),
    lampsOf(answer),
    figuresOf(answer),
  ];
  return `${parts.filter((part) => part !== "").join("\n\n")}\n`;
}

function sourcesOf({ sources }: SupplyAnswer): string {
  if (sources.length === 0) return "Nothing charges the battery.";
  return sources
    .map((source) => {
      if (source.ceilingA === null || source.cutInRpm === null) {
        const rated =
          source.ratedW === null
            ? ""
            : ` It is rated ${source.ratedW} W, which says nothing of idle.`;
        return wrapText(
          `${source.generator}: ${source.why}. Give its amps at two speeds.${rated}`,
          100,
        );
      }
      const held =
        source.heldV === null ? "unregulated" : `held at ${volts(source.heldV)} at the battery`;
      const shunt = source.isShunt
        ? " Its regulator shorts the winding: the stator carries its ceiling whatever you save."
        : "";
      return wrapText(
        `${source.generator}: gives nothing below ${rpm(source.cutInRpm)} rpm, never more than ${amps(source.ceilingA)}; ${held}; its output is known to ${printNumber(source.bandPercent, 0)} %.${shunt}${source.note === null ? "" : ` ${source.note}`}`,
        100,
      );
    })
    .join("\n");
}

function balanceOf({ balances, atV }: SupplyAnswer, unchanged: SupplyAnswer | null): string {
  const former = new Map((unchanged?.balances ?? []).map((one) => [one.state, one]));
  const rows = balances.map((one) => {
    const before = former.get(one.state);
    return [
      shortened(one.name),
      amps(one.demandA),
      `${printNumber(one.demandW, 0)} W`,
      one.why === null ? rpm(one.balanceRpm) : "not known",
      one.why === null ? `${rpm(one.balanceLowRpm)} to ${rpm(one.balanceHighRpm)}` : "",
      ...(before === undefined ? [] : [rpm(before.balanceRpm)]),
    ];
  });
  const heading = [`at ${volts(atV)}`, "needs", "", "balance rpm", "band"];
  if (unchanged !== null) heading.push("before");
  return printTable(heading, rows, { right: [1, 2, 3, 4, 5] });
}

const LONGEST_NAME = 44;

/** Whole names are in the JSON. */
const shortened = (name: string): string =>
  name.length <= LONGEST_NAME ? name : `${name.slice(0, LONGEST_NAME - 1)}…`;

function speedsOf({ balances }: SupplyAnswer): string {
  const blocks = balances.filter(({ rows }) => rows.length > 0);
  const most = blocks.toSorted((a, b) => b.demandA - a.demandA)[0];
  if (most === undefined) return "";
  const rows = most.rows.map((row) => [
    printNumber(row.speedRpm, 0),
    amps(row.availableA),
    amps(row.surplusA),
    volts(row.settledV),
    amps(row.batteryA),
  ]);
  const table = printTable(["rpm", "could give", "over", "settles at", "into battery"], rows, {
    right: [0, 1, 2, 3, 4],
  });
  return `${most.name}, speed by speed:\n${table}`;
}

function ridesOf({ rides, noRides }: SupplyAnswer): string {
  if (noRides !== null) return `No ride was reckoned: ${noRides}.`;
  const rows = rides.map((ride) => [
    ride.ride,
    `${printNumber(ride.durationS / HOUR_S, 1)} h`,
    `${printNumber(ride.startPercent, 0)} %`,
    `${printNumber(ride.endPercent, 0)} %`,
    `${printNumber(ride.leastPercent, 0)} %`,
    volts(ride.leastV),
    rideNote(ride),
  ]);
  return printTable(["ride", "takes", "from", "to", "least", "least volts", ""], rows, {
    right: [1, 2, 3, 4, 5],
  });
}

function rideNote({ emptyAtS, overchargeAh }: SupplyAnswer["rides"][number]): string {
  if (emptyAtS !== null) return `flat after ${printNumber(emptyAtS / HOUR_S, 1)} h`;
  return overchargeAh > 0.05 ? `${printNumber(overchargeAh, 1)} Ah into a full battery` : "";
}

function heatOf({ heat }: SupplyAnswer): string {
  return heat
    .map(({ generator, isShunt, rows }) => {
      const table = rows.map((row) => [
        printNumber(row.speedRpm, 0),
        amps(row.outputA),
        amps(row.windingA),
        row.windingW === null ? "not known" : `${printNumber(row.windingW, 0)} W`,
        `${printNumber(row.unitW, 0)} W`,
        ...(row.zenerW === null ? [] : [`${printNumber(row.zenerW, 0)} W`]),
      ]);
      const zener = rows.some(({ zenerW }) => zenerW !== null) ? ["zener"] : [];
      const heads = ["rpm", "used", "in winding", "winding heat", "unit heat", ...zener];
      const words = isShunt
        ? "Heat, which a shunt regulator does not save by what is switched off:"
        : "Heat:";
      return `${generator}. ${words}\n${printTable(heads, table, { right: [0, 1, 2, 3, 4, 5] })}`;
    })
    .join("\n\n");
}

function excitationOf({ excitation }: SupplyAnswer): string {
  if (excitation === null) return "";
  const rows = excitation.rows.map((row) => [
    row.lamp,
    `${printNumber(row.fieldA * 1000, 0)} mA`,
    row.excites ? "starts to charge" : "not to be relied on",
  ]);
  const need = `With a light-emitting charge lamp ${printNumber(excitation.neededOhm, 0)} ohm, ${printNumber(excitation.neededW, 1)} W across it would do.`;
  return `First field current of ${excitation.generator} through ${excitation.chargeLamp ?? "its own way"}, engine stopped:\n${printTable(["charge lamp", "field", ""], rows, { right: [1] })}\n${need}`;
}

function coilBalanceOf({ lightingCoils }: SupplyAnswer): string {
  if (lightingCoils.length === 0) return "";
  const rows = lightingCoils.flatMap(({ generator, state, coilW, askedW, rows: speeds }) =>
    speeds.map((row) => [
      generator,
      state,
      coilW === null ? "?" : `${printNumber(coilW, 0)} W`,
      `${printNumber(askedW, 1)} W`,
      printNumber(row.speedRpm, 0),
      volts(row.v),
      `${printNumber(row.takenW, 1)} W`,
      `${printNumber(100 * row.relativeLight, 0)} %`,
    ]),
  );
  return printTable(["coil", "state", "coil", "asked", "rpm", "rms", "taken", "light"], rows, {
    right: [2, 3, 4, 5, 6, 7],
  });
}

/** The headlamp alone, or whatever lamp is largest: the rest is in the JSON and on the sheet. */
function lampsOf({ lamps }: SupplyAnswer): string {
  const large = lamps.filter(
    ({ ratedW }) => ratedW === Math.max(...lamps.map((one) => one.ratedW)),
  );
  const [one] = large;
  if (one === undefined) return "";
  const rows = one.rows.map((row) => [
    printNumber(row.speedRpm, 0),
    volts(row.postsV),
    volts(row.v),
    `${printNumber(row.powerW, 1)} W`,
    `${printNumber(100 * Math.min(row.lightLowRatio, row.lightHighRatio), 0)} to ${printNumber(100 * Math.max(row.lightLowRatio, row.lightHighRatio), 0)} %`,
    row.lifeRatio === null ? "" : `${printNumber(row.lifeRatio, 2)} of its life`,
  ]);
  return `${one.lamp}, ${one.name}, at the volts it gets:\n${printTable(["rpm", "battery", "lamp", "takes", "light", ""], rows, { right: [0, 1, 2, 3, 4] })}`;
}

function figuresOf({ figures }: SupplyAnswer): string {
  const remembered = figures.filter(({ confidence }) => confidence === "memory");
  const list = remembered.map(({ used, value, unit }) =>
    `${used} ${value} ${unit === "ratio" ? "" : unit}`.trim(),
  );
  return wrapText(
    `Only remembered, so confirm before leaning on them: ${list.join("; ")}. All ${figures.length} figures with their sources are in --json.`,
    100,
  );
}
