import {
  type AreaMm,
  type Block,
  headingBlock,
  type TableColumn,
  type TableRow,
  tableBlocks,
} from "../../drawing/index.ts";
import type { SupplyAnswer } from "../../supply/index.ts";
import { printNumber, printQuantity } from "../../units/index.ts";

const natural = (key: string, heading: string, maxMm = 30): TableColumn => ({
  key,
  heading,
  width: { kind: "natural", maxMm },
  align: "end",
});
const wide = (key: string, heading: string): TableColumn => ({
  key,
  heading,
  width: { kind: "share", share: 1, minMm: 40 },
});

function titled(
  title: string,
  columns: readonly TableColumn[],
  rows: readonly TableRow[],
  { widthMm, heightMm }: AreaMm,
): readonly Block[] {
  if (rows.length === 0) return [];
  const table = { columns, groups: [{ heading: null, rows }] };
  return [...headingBlock(title, widthMm, 2), ...tableBlocks(table, widthMm, heightMm)];
}

const HOUR_S = 3600;
const spell = (timeS: number | null): string => {
  if (timeS === null) return "never";
  const hours = timeS / HOUR_S;
  return hours < 48 ? `${printNumber(hours, 1)} h` : `${printNumber(hours / 24, 0)} days`;
};

/** Under a tenth of an ampere in milliamperes. */
const smallAmps = (currentA: number): string =>
  currentA < 0.1 ? `${printNumber(1000 * currentA, 0)} mA` : printQuantity(currentA, "A");

/** What it draws left standing, and for how long the battery stands it. */
export function standingBlocks({ standing }: SupplyAnswer, content: AreaMm): readonly Block[] {
  const columns = [
    wide("name", "Left standing"),
    natural("draws", "Draws"),
    natural("half", "To half"),
    natural("empty", "To empty"),
    natural("start", "May not start"),
  ];
  const rows = standing.map((row) => ({
    cells: {
      name: row.name,
      draws: smallAmps(row.currentA),
      half: spell(row.toHalfS),
      empty: spell(row.toEmptyS),
      start: spell(row.toNoStartS),
    },
  }));
  return titled("Left standing, from a full battery", columns, rows, content);
}

/** Lighting coils: watts of the lamps that are on against the coil's, and what comes of it. */
export function coilBlocks({ lightingCoils }: SupplyAnswer, content: AreaMm): readonly Block[] {
  const columns = [
    wide("state", "Lit by the coil"),
    natural("coil", "Coil"),
    natural("asked", "Asked"),
    natural("rpm", "rpm"),
    natural("v", "Volts rms"),
    natural("takes", "Taken"),
    natural("light", "Least light"),
  ];
  const rows = lightingCoils.flatMap(({ state, coilW, askedW, rows: speeds }) =>
    speeds.map((row, k) => ({
      cells: {
        state: k === 0 ? state : "",
        coil: k > 0 ? "" : coilW === null ? "?" : printQuantity(coilW, "W"),
        asked: k > 0 ? "" : printQuantity(askedW, "W"),
        rpm: printNumber(row.speedRpm, 0),
        v: printQuantity(row.v, "V"),
        takes: printQuantity(row.takenW, "W"),
        light: `${printNumber(100 * row.relativeLight, 0)} %`,
      },
    })),
  );
  return titled("Alternating lighting", columns, rows, content);
}

/** Lamps at the volts they get: the slowest and the fastest speed of each. */
export function lampBlocks({ lamps }: SupplyAnswer, content: AreaMm): readonly Block[] {
  const columns = [
    wide("lamp", "Lamp"),
    natural("rpm", "rpm"),
    natural("v", "Volts"),
    natural("takes", "Takes"),
    natural("light", "Light"),
    natural("life", "Life"),
  ];
  const seen = new Set<string>();
  const rows = lamps.flatMap((lamp): TableRow[] => {
    if (seen.has(lamp.lamp)) return [];
    seen.add(lamp.lamp);
    const ends = [lamp.rows[0]!, lamp.rows.at(-1)!];
    return ends.map((row, k) => {
      const lights = [row.lightLowRatio, row.lightHighRatio].sort((a, b) => a - b);
      return {
        id: lamp.lamp,
        cells: {
          lamp: k === 0 ? lamp.name : "",
          rpm: printNumber(row.speedRpm, 0),
          v: printQuantity(row.v, "V"),
          takes: printQuantity(row.powerW, "W"),
          light: `${lights.map((one) => printNumber(100 * one, 0)).join(" to ")} %`,
          life: row.lifeRatio === null ? "" : `× ${printNumber(row.lifeRatio, 2)}`,
        },
      };
    });
  });
  return titled("Lamps at the volts they get", columns, rows, content);
}

/** Figures only remembered, to be confirmed before somebody leans on them. */
export function figureBlocks({ figures }: SupplyAnswer, content: AreaMm): readonly Block[] {
  const columns = [
    wide("used", "Figure"),
    natural("value", "Value"),
    { ...natural("source", "Source", 60), align: "start" as const },
    { ...natural("sure", "How sure", 34), align: "start" as const },
  ];
  const rows = figures.map((row) => ({
    cells: {
      used: row.used,
      value: `${row.value} ${row.unit === "ratio" ? "" : row.unit}`.trim(),
      source: row.source,
      sure: row.confidence,
    },
  }));
  return titled("What it rests on", columns, rows, content);
}
