import {
  type CircuitColumn,
  type GroupMark,
  type Mark,
  marksBox,
  type PointMm,
} from "../../drawing/index.ts";
import type { MachineGraph } from "../circuit/machineGraph.ts";
import type { WirePlace } from "./wirePlaces.ts";

type Pins = readonly { readonly id: string; readonly at: PointMm }[];

/**
 * Where the pins of one circuit's drawing lie: at the end of a wire on them, else in the middle of their name. Ways of a joint stand at its dot under its own
 * id, because a wire taken there gets a way of its own.
 */
export function circuitPins(
  graph: MachineGraph,
  columns: readonly CircuitColumn[],
  marks: readonly Mark[],
  wires: readonly WirePlace[],
): Pins {
  const found = new Map<string, PointMm>();
  const put = (pin: string | undefined, at: PointMm | undefined): void => {
    if (pin === undefined || at === undefined) return;
    const point = graph.pointOf(pin);
    const id = graph.joints.has(point) ? pin.slice(0, pin.indexOf(".")) : pin;
    if (!found.has(id)) found.set(id, at);
  };
  for (const step of columns.flatMap(({ steps }) => steps)) {
    if (step.kind !== "wire") continue;
    const points = wires
      .filter(({ id }) => id === step.id)
      .flatMap((wire) => wire.points)
      .toSorted((a, b) => a.yMm - b.yMm);
    put(step.pinAbove, points[0]);
    put(step.pinBelow, points.at(-1));
  }
  for (const { id, marks: inner } of pinGroups(marks)) put(id, middleOf(inner));
  return [...found].map(([id, at]) => ({ id, at })).sort((p, q) => (p.id < q.id ? -1 : 1));
}

function pinGroups(marks: readonly Mark[]): readonly GroupMark[] {
  return marks.flatMap((mark): readonly GroupMark[] => {
    if (mark.kind !== "group") return [];
    const isPin = mark.of === "pin" && (mark.id?.includes(".") ?? false);
    return isPin ? [mark] : pinGroups(mark.marks);
  });
}

function middleOf(marks: readonly Mark[]): PointMm | undefined {
  const box = marksBox(marks);
  if (box === null) return undefined;
  return { xMm: box.xMm + box.widthMm / 2, yMm: box.yMm + box.heightMm / 2 };
}
