import { LINE_MM, type Mark, point, poleSigns } from "../../drawing/index.ts";
import type { DiagramLayout, PlacedNode } from "../../layout/index.ts";
import type { MachineGraph } from "../circuit/machineGraph.ts";
import type { PaperInput } from "../paperInput.ts";
import { pointSubject } from "../pointSubject.ts";
import { nodeName } from "./diagramLadder.ts";
import { DIAGRAM_CAP_MM, type LetteringLine, lettered } from "./diagramLettering.ts";
import { dot, lead, textMark } from "./itemMarks.ts";

/** Everything the marks of nodes are made from. */
export interface NodesDrawn {
  readonly input: PaperInput;
  readonly graph: MachineGraph;
  readonly layout: DiagramLayout;
  /** Nodes at which a part's own symbol stands. */
  readonly names: ReadonlySet<string>;
  readonly rails: ReadonlySet<string>;
}

/** Which pole the upper rail is, and whose. */
export function railWords({ input, layout, rails }: NodesDrawn): Mark[] {
  const { live } = poleSigns(input.info);
  return layout.nodes
    .filter(({ id }) => rails.has(id))
    .map(({ id, meetsXMm, yMm }) =>
      textMark(
        lettered(`live ${live}, ${id.replace(".", " ")}`, DIAGRAM_CAP_MM.text, 700),
        meetsXMm[0]!,
        yMm - 2,
      ),
    );
}

export function nodeMarks({ names, rails, graph }: NodesDrawn, node: PlacedNode): Mark[] {
  const { id, xMm, yMm, meetsXMm, toldColumns } = node;
  const [fromXMm, toXMm] = [meetsXMm[0]!, meetsXMm.at(-1)!];
  const isRail = rails.has(id);
  const stroke = {
    ...lead,
    widthMm: isRail ? LINE_MM.frame : LINE_MM.symbol,
    cap: "round",
  } as const;
  const inner = meetsXMm.filter((at) => at > fromXMm + 0.01 && at < toXMm - 0.01);
  const dots = new Set(isRail ? meetsXMm : [...inner, xMm]);
  const told = toldColumns.map((column) => column + 1).join(", ");
  const bus: Mark[] =
    toXMm - fromXMm > 1e-6
      ? [{ kind: "line", from: point(fromXMm, yMm), to: point(toXMm, yMm), stroke }]
      : [];
  const bold = (text: string): LetteringLine => lettered(text, DIAGRAM_CAP_MM.text, 700);
  const name = [
    textMark(bold(nodeName(id, names.has(id))), xMm - 1.2, yMm - 1.1, "end"),
    ...(told === "" ? [] : [textMark(bold(`\u2190 ${told}`), xMm + 1.6, yMm - 1.1)]),
  ];
  return [
    {
      kind: "group",
      id,
      of: pointSubject(graph, id),
      name: `joint ${id}`,
      marks: [...bus, ...[...dots].map((at) => dot(at, yMm)), ...(isRail ? [] : name)],
    },
  ];
}
