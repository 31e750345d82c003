import { CAP_MM, LINE_MM } from "./lineWidth.ts";
import { measureTextMm } from "./measureTextMm.ts";
import { area, type Mark, type PointMm, point } from "./scene.ts";
import { dateText, poleSigns, type SheetInfo } from "./sheetInfo.ts";
import { TEXT_STYLE, textMark } from "./textBlock.ts";
import { wrapText } from "./wrapText.ts";

export const SUPPLY_PLATE_WIDTH_MM = 104;
const SUPPLY_PART_MM = 50;
const PAD_MM = 2.5;
const HEIGHT_MIN_MM = 15;

/**
 * The plate at the top right of every sheet: machine, job, revision and date, then volts, live pole and earthed pole.
 * A long machine name makes it taller, never smaller.
 */
export function supplyPlate(
  info: SheetInfo,
  topRight: PointMm,
): { readonly marks: Mark[]; readonly heightMm: number } {
  const leftMm = topRight.xMm - SUPPLY_PLATE_WIDTH_MM;
  const splitMm = topRight.xMm - SUPPLY_PART_MM;
  const textWidthMm = SUPPLY_PLATE_WIDTH_MM - SUPPLY_PART_MM - 2 * PAD_MM;
  const machine = wrapText(info.machine, textWidthMm, CAP_MM.text, 700);
  const job = wrapText(
    `job ${info.jobId}, rev ${info.revision}, ${dateText(info.date)}`,
    textWidthMm,
    CAP_MM.fine,
    400,
  );
  const machinePitchMm = 4.4;
  const jobPitchMm = 3.4;
  const machineMm = machine.length * machinePitchMm;
  const heightMm = Math.max(HEIGHT_MIN_MM, 3.2 + machineMm + job.length * jobPitchMm + 2);
  const topMm = topRight.yMm + (heightMm - machineMm - job.length * jobPitchMm) / 2;
  const detail = { widthMm: LINE_MM.detail, colour: "ink" } as const;
  const marks: Mark[] = [
    {
      kind: "rect",
      area: area(leftMm, topRight.yMm, SUPPLY_PLATE_WIDTH_MM, heightMm),
      stroke: { widthMm: LINE_MM.frame, colour: "ink" },
      fill: "ground",
    },
    {
      kind: "line",
      from: point(splitMm, topRight.yMm),
      to: point(splitMm, topRight.yMm + heightMm),
      stroke: detail,
    },
    ...machine.map((line, i) =>
      textMark(line, leftMm + PAD_MM, topMm + 3 + i * machinePitchMm, TEXT_STYLE.strong),
    ),
    ...job.map((line, i) =>
      textMark(line, leftMm + PAD_MM, topMm + machineMm + 2.4 + i * jobPitchMm, {
        ...TEXT_STYLE.fine,
        colour: "ink",
      }),
    ),
    ...poles(info, splitMm + PAD_MM, topRight.yMm + heightMm / 2),
  ];
  return { marks: [{ kind: "group", name: "supply", marks }], heightMm };
}

/** Volts large, then the live and the earthed pole, then the earth symbol. */
function poles(info: SheetInfo, xMm: number, middleMm: number): Mark[] {
  const volts = `${info.nominalV} V`;
  const polesMm = xMm + measureTextMm(volts, CAP_MM.wireNumber, 800) + 3;
  const { live, earth } = poleSigns(info);
  return [
    textMark(volts, xMm, middleMm + CAP_MM.wireNumber / 2, TEXT_STYLE.wireNumber),
    textMark(`live ${live}`, polesMm, middleMm - 1.1, TEXT_STYLE.strong),
    textMark(`earth ${earth}`, polesMm, middleMm + 3.9, TEXT_STYLE.strong),
    ...earthSign(point(xMm + SUPPLY_PART_MM - 2 * PAD_MM - 4, middleMm - 0.5)),
  ];
}

const earthSign = ({ xMm, yMm }: PointMm): Mark[] => {
  const stroke = { widthMm: LINE_MM.symbol, colour: "ink" } as const;
  const bar = (dyMm: number, halfMm: number): Mark => ({
    kind: "line",
    from: point(xMm - halfMm, yMm + dyMm),
    to: point(xMm + halfMm, yMm + dyMm),
    stroke,
  });
  return [
    { kind: "line", from: point(xMm, yMm - 3), to: point(xMm, yMm), stroke },
    bar(0, 3.5),
    bar(1.5, 2.1),
    bar(3, 0.8),
  ];
};
