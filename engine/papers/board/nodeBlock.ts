import {
  CAP_MM,
  type Drawn,
  type Mark,
  measureTextMm,
  moveMarks,
  point,
  TEXT_STYLE,
  type TextStyle,
  textMark,
  wrapText,
} from "../../drawing/index.ts";
import { printNumber } from "../../units/index.ts";
import { colourCode, colourWords } from "../colourText.ts";
import type { PaperInput } from "../paperInput.ts";
import { pinReader } from "../pinText.ts";
import { numberOf } from "../wireRows.ts";
import { connectorOutline } from "./connectorOutline.ts";
import type { WireEnd } from "./wireEnds.ts";

/** More ends than this at one place are listed by what they go to, fewer each on a line of its own. */
const LINES_MOST = 12;
const WRAP_MM = 92;
const SWATCH_MM = 9;

/** What is written where wires come out of the loom: the place, then connectors in outline and every wire that ends there. */
export function nodeBlock(
  input: PaperInput,
  head: { readonly name: string; readonly note: string },
  ends: readonly WireEnd[],
): Drawn {
  const connectorIds = new Set(input.job.connectors.map(({ id }) => id));
  const ownerOf = (pin: string): string => pin.slice(0, pin.indexOf("."));
  const plugged = ends.filter(
    ({ pin, otherPin }) => otherPin === null && connectorIds.has(ownerOf(pin)),
  );
  const others = ends.filter((end) => !plugged.includes(end));
  const stack: Drawn[] = [
    line(head.name, TEXT_STYLE.part, 5.2),
    ...(head.note === "" ? [] : [line(head.note, TEXT_STYLE.text, 4.4)]),
    ...outlines(input, plugged),
    ...(others.length > LINES_MOST ? grouped(input, others) : listed(input, others)),
  ];
  return stacked(stack);
}

function line(text: string, style: TextStyle, heightMm: number): Drawn {
  return {
    marks: [textMark(text, 0, style.capHeightMm + 0.6, style)],
    widthMm: measureTextMm(text, style.capHeightMm, style.weight),
    heightMm,
  };
}

/** Things one under the other. */
export function stacked(stack: readonly Drawn[], gapMm = 0): Drawn {
  let yMm = 0;
  const marks: Mark[] = stack.flatMap((one) => {
    const moved = moveMarks(one.marks, 0, yMm);
    yMm += one.heightMm + gapMm;
    return moved;
  });
  return {
    marks,
    widthMm: Math.max(...stack.map(({ widthMm }) => widthMm)),
    heightMm: yMm - gapMm,
  };
}

/** The halves of connectors this loom ends in, beside each other while they fit. */
function outlines(input: PaperInput, plugged: readonly WireEnd[]): readonly Drawn[] {
  const halves = [
    ...new Set(
      plugged.map(
        ({ pin }) => `${pin.slice(0, pin.indexOf("."))} ${pin.endsWith("p") ? "plug" : "socket"}`,
      ),
    ),
  ].sort();
  const drawn = halves.map((key) => {
    const [id, half] = key.split(" ") as [string, "plug" | "socket"];
    return connectorOutline(input, input.job.connectors.find((one) => one.id === id)!, half);
  });
  const rows: { marks: Mark[]; widthMm: number; heightMm: number }[] = [];
  for (const one of drawn) {
    const last = rows.at(-1);
    if (last === undefined || last.widthMm + 5 + one.widthMm > 120) {
      rows.push({ marks: [...one.marks], widthMm: one.widthMm, heightMm: one.heightMm + 2 });
      continue;
    }
    last.marks.push(...moveMarks(one.marks, last.widthMm + 5, 0));
    last.widthMm += 5 + one.widthMm;
    last.heightMm = Math.max(last.heightMm, one.heightMm + 2);
  }
  return rows;
}

/** One line a wire: number, a piece of it, code and words, area, where it goes on this spot. */
function listed({ job, design }: PaperInput, ends: readonly WireEnd[]): readonly Drawn[] {
  const read = pinReader(job);
  const rows = ends.map(({ wire, pin, otherPin }) => {
    const areaMm2 = design.conductors.get(wire.id)?.areaMm2 ?? null;
    const goal =
      otherPin === null ? `to ${read(pin).short}` : `${read(pin).short} to ${read(otherPin).short}`;
    const colour = `${colourCode(wire.colour, job.colours.letters)} ${colourWords(wire.colour)}`;
    return {
      wire,
      areaMm2,
      number: numberOf(wire),
      colour,
      size: printNumber(areaMm2 ?? 0, 1),
      goal,
    };
  });
  const widest = (pick: (row: (typeof rows)[number]) => string, weight: 400 | 700): number =>
    Math.max(0, ...rows.map((row) => measureTextMm(pick(row), CAP_MM.text, weight)));
  const swatchX = widest(({ number }) => number, 700) + 1.5;
  const colourX = swatchX + SWATCH_MM + 1.5;
  const sizeX = colourX + widest(({ colour }) => colour, 400) + 2.5;
  const goalX = sizeX + widest(({ size }) => size, 400) + 2.5;
  return rows.map(({ wire, areaMm2, number, colour, size, goal }) => {
    const baseMm = CAP_MM.text + 0.8;
    const midMm = baseMm - CAP_MM.text / 2;
    return {
      marks: [
        textMark(number, 0, baseMm, TEXT_STYLE.strong),
        {
          kind: "wire",
          id: wire.id,
          points: [point(swatchX, midMm), point(swatchX + SWATCH_MM, midMm)],
          areaMm2,
          colours: wire.colour ?? null,
        },
        textMark(colour, colourX, baseMm, TEXT_STYLE.text),
        textMark(size, sizeX, baseMm, TEXT_STYLE.text),
        textMark(goal, goalX, baseMm, TEXT_STYLE.text),
      ],
      widthMm: goalX + measureTextMm(goal, CAP_MM.text, 400),
      heightMm: 4.4,
    };
  });
}

/** What they go to, then the numbers with their codes. */
function grouped({ job }: PaperInput, ends: readonly WireEnd[]): readonly Drawn[] {
  const byOwner = new Map<string, string[]>();
  for (const { wire, pin, otherPin } of ends) {
    const text = `${numberOf(wire)} ${colourCode(wire.colour, job.colours.letters)}`;
    for (const one of otherPin === null ? [pin] : [pin, otherPin]) {
      const owner = one.slice(0, one.indexOf("."));
      byOwner.set(owner, [...(byOwner.get(owner) ?? []), text]);
    }
  }
  const indentMm =
    Math.max(...[...byOwner.keys()].map((id) => measureTextMm(id, CAP_MM.text, 700))) + 2;
  return [...byOwner].flatMap(([owner, texts]) =>
    wrapText(texts.join(",  "), WRAP_MM, CAP_MM.text, 400).map((text, i) => ({
      marks: [
        ...(i === 0 ? [textMark(owner, 0, CAP_MM.text + 0.8, TEXT_STYLE.strong)] : []),
        textMark(text, indentMm, CAP_MM.text + 0.8, TEXT_STYLE.text),
      ],
      widthMm: indentMm + measureTextMm(text, CAP_MM.text, 400),
      heightMm: 4.2,
    })),
  );
}
