import {
  area,
  CAP_MM,
  type Drawn,
  fitText,
  LINE_MM,
  type Mark,
  measureTextMm,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";
import type { Connector } from "../../job/index.ts";
import type { PaperInput } from "../paperInput.ts";
import { numberOf } from "../wireRows.ts";

const CELL = { widthMm: 10, heightMm: 7.6 } as const;
const HEAD_MM = 8.4;

/** A half of a connector beside the loom that ends in it: cavities as seen from the wire side, each with the wire that goes in. */
export function connectorOutline(
  { design }: PaperInput,
  connector: Connector,
  half: "plug" | "socket",
): Drawn {
  const rowCount = connector.rowCount ?? 1;
  const perRow = Math.ceil(connector.cavities.length / rowCount);
  const caption = `${half}, seen from wire side`;
  const widthMm = perRow * CELL.widthMm + 2;
  const heightMm = rowCount * CELL.heightMm + 2;
  const marks: Mark[] = [
    textMark(`${connector.id} ${connector.name}`, 0, CAP_MM.text, TEXT_STYLE.strong),
    textMark(caption, 0, HEAD_MM - 2.2, TEXT_STYLE.fine),
    {
      kind: "rect",
      area: area(0, HEAD_MM, widthMm, heightMm),
      cornerMm: 1,
      stroke: { widthMm: LINE_MM.frame, colour: "ink" },
      fill: "ground",
    },
    ...connector.cavities.flatMap((cavity, i): Mark[] => {
      const xMm = 1 + (i % perRow) * CELL.widthMm;
      const yMm = HEAD_MM + 1 + Math.floor(i / perRow) * CELL.heightMm;
      const pin = `${connector.id}.${cavity}${half === "plug" ? "p" : "s"}`;
      const wires = design.wiresAt.get(pin) ?? [];
      const text = wires.length === 0 ? "–" : wires.map(numberOf).join(" ");
      const cell: Mark[] = [
        {
          kind: "rect",
          area: area(xMm, yMm, CELL.widthMm, CELL.heightMm),
          stroke: { widthMm: LINE_MM.leader, colour: "ink" },
        },
        textMark(cavity, xMm + 0.6, yMm + 2.3, TEXT_STYLE.fine),
        ...fitText(text, area(xMm + 0.6, yMm + 3.4, CELL.widthMm - 1.2, 3.8), {
          weight: 700,
          colour: "ink",
          capsMm: [CAP_MM.text, CAP_MM.fine],
        }),
      ];
      return [{ kind: "group", id: pin, of: "pin", marks: cell }];
    }),
  ];
  const textMm = Math.max(
    measureTextMm(`${connector.id} ${connector.name}`, CAP_MM.text, 700),
    measureTextMm(caption, CAP_MM.fine, 400),
  );
  const whole: Mark = { kind: "group", id: connector.id, of: "connector", marks };
  return { marks: [whole], widthMm: Math.max(widthMm, textMm), heightMm: HEAD_MM + heightMm + 0.5 };
}
