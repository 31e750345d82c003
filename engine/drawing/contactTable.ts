import type { Drawn } from "./drawn.ts";
import { CAP_MM, LINE_MM } from "./lineWidth.ts";
import { measureTextMm } from "./measureTextMm.ts";
import { area, type Mark, point, type Stroke } from "./scene.ts";
import { TEXT_STYLE, textMark } from "./textBlock.ts";

/** Which pins a switch joins in which position. */
export interface ContactTableInput {
  readonly id?: string | undefined;
  /** Names as stamped on the switch, in the order they are to stand. */
  readonly pins: readonly string[];
  readonly positions: readonly {
    readonly name: string;
    /** Set bold: where the switch stands when nobody touches it. */
    readonly isRest?: boolean | undefined;
    readonly joins: readonly (readonly [pinA: string, pinB: string])[];
  }[];
}

const HEAD_MM = 5;
const LANE_MM = 4.5;
const DOT_MM = 0.9;
const detail: Stroke = { widthMm: LINE_MM.detail, colour: "ink" };

/**
 * Positions down, pins across. Pins joined in a position are dots on one line; a pin the line only passes keeps its open ring. Where two lines
 * of one position would lie on each other, the row has a lane for each.
 */
export function contactTable(input: ContactTableInput): Drawn {
  const nameMm =
    2.5 +
    Math.max(
      ...input.positions.map(({ name, isRest }) =>
        measureTextMm(name, CAP_MM.text, isRest ? 700 : 400),
      ),
    ) +
    3;
  const pitchMm = Math.max(
    6,
    ...input.pins.map((pin) => measureTextMm(pin, CAP_MM.text, 700) + 2.5),
  );
  const xOf = (pin: string): number => nameMm + (input.pins.indexOf(pin) + 0.5) * pitchMm;
  const widthMm = nameMm + input.pins.length * pitchMm;
  const marks: Mark[] = input.pins.map((pin) =>
    textMark(pin, xOf(pin), HEAD_MM - 1.4, TEXT_STYLE.strong, "middle"),
  );
  let yMm = HEAD_MM;
  input.positions.forEach((position, i) => {
    const lanes = lanesOf(joinedSets(position.joins, input.pins), input.pins);
    const rowMm = Math.max(1, lanes.length) * LANE_MM + 1;
    const style = position.isRest ? TEXT_STYLE.strong : TEXT_STYLE.text;
    if (i > 0)
      marks.push({ kind: "line", from: point(0, yMm), to: point(widthMm, yMm), stroke: detail });
    marks.push(textMark(position.name, 2, yMm + rowMm / 2 + CAP_MM.text / 2, style));
    marks.push(...rowMarks(input.pins, lanes, xOf, yMm + rowMm / 2));
    yMm += rowMm;
  });
  const frame: Mark = {
    kind: "rect",
    area: area(0, HEAD_MM, widthMm, yMm - HEAD_MM),
    stroke: detail,
    fill: "ground",
  };
  return {
    marks: [{ kind: "group", id: input.id, name: "contact table", marks: [frame, ...marks] }],
    widthMm,
    heightMm: yMm,
  };
}

/** Pins joined with one another, each set in the order of the columns. */
function joinedSets(
  joins: readonly (readonly [string, string])[],
  pins: readonly string[],
): string[][] {
  const setOf = new Map(pins.map((pin) => [pin, new Set([pin])]));
  for (const [a, b] of joins) {
    const [setA, setB] = [setOf.get(a), setOf.get(b)];
    if (!setA || !setB)
      throw new Error(`a contact table joins ${a} and ${b}, but lists ${pins.join(", ")}`);
    const merged = new Set([...setA, ...setB]);
    for (const pin of merged) setOf.set(pin, merged);
  }
  return [...new Set(setOf.values())]
    .filter((set) => set.size > 1)
    .map((set) => pins.filter((pin) => set.has(pin)));
}

/** Sets sorted into lanes so that no two spans of a lane touch. */
function lanesOf(sets: readonly string[][], pins: readonly string[]): string[][][] {
  const lanes: string[][][] = [];
  for (const set of sets) {
    const fits = (lane: string[][]): boolean =>
      lane.every((other) => pins.indexOf(other.at(-1)!) < pins.indexOf(set[0]!));
    const lane = lanes.find(fits);
    if (lane) lane.push(set);
    else lanes.push([set]);
  }
  return lanes;
}

function rowMarks(
  pins: readonly string[],
  lanes: readonly string[][][],
  xOf: (pin: string) => number,
  middleMm: number,
): Mark[] {
  const yOf = (lane: number): number =>
    middleMm + (lane - (Math.max(1, lanes.length) - 1) / 2) * LANE_MM;
  const laneIndexOf = new Map(
    lanes.flatMap((lane, k) => lane.flatMap((set) => set.map((pin) => [pin, k] as const))),
  );
  const lines = lanes.flatMap((lane, k) =>
    lane.map(
      (set): Mark => ({
        kind: "line",
        from: point(xOf(set[0]!), yOf(k)),
        to: point(xOf(set.at(-1)!), yOf(k)),
        stroke: { widthMm: LINE_MM.symbol, colour: "ink" },
      }),
    ),
  );
  const dots = pins.map((pin): Mark => {
    const lane = laneIndexOf.get(pin);
    const centre = point(xOf(pin), lane === undefined ? yOf(0) : yOf(lane));
    if (lane !== undefined) return { kind: "circle", centre, radiusMm: DOT_MM, fill: "ink" };
    return {
      kind: "circle",
      centre,
      radiusMm: DOT_MM,
      stroke: { widthMm: LINE_MM.leader, colour: "ink" },
    };
  });
  return [...lines, ...dots];
}
