import { type MarkSubject, moveMarks, type PointMm } from "../../drawing/index.ts";
import type { DiagramLayout, PlacedSegment } from "../../layout/index.ts";
import { machineGraph } from "../circuit/machineGraph.ts";
import { contactStrip } from "../diagram/contactStrip.ts";
import { type DiagramDrawing, diagramDrawing, HEAD_MM } from "../diagram/diagramDrawing.ts";
import { pointSubject } from "../pointSubject.ts";
import { framedScene, type Scene } from "./framedScene.ts";
import { type SceneAsked, sourceOf } from "./sceneSource.ts";
import { type WirePlace, wirePlaces } from "./wirePlaces.ts";

/** Heights tried until no path has to be cut, mm. */
const HEIGHTS_MM = [300, 420, 600, 900] as const;
const WIDE_MM = 1e5;
const STRIP_GAP_MM = 4;

export interface DiagramScene {
  readonly scene: Scene;
  /** As laid out, from the upper left corner of the ladder: `originMm` on the scene. */
  readonly layout: DiagramLayout;
  /** On the scene: where a `layout.diagram` place of the job with xMm 0 and yMm 0 lies. */
  readonly originMm: PointMm;
  readonly columns: readonly DiagramColumn[];
  readonly wires: readonly WirePlace[];
  readonly pins: readonly { readonly id: string; readonly at: PointMm }[];
  readonly nodes: readonly DiagramPlace[];
}

export interface DiagramColumn {
  /** As written at its foot, from 1. */
  readonly index: number;
  readonly xMm: number;
  /** Ids of wires, parts, connectors, joints and bodies in it, from above. */
  readonly ids: readonly string[];
}

/** A place where ways part or meet: its bus runs from `fromXMm` to `toXMm`. */
export interface DiagramPlace {
  readonly id: string;
  readonly of: MarkSubject;
  readonly at: PointMm;
  readonly fromXMm: number;
  readonly toXMm: number;
}

/** The complete machine as one drawing, in the larger lettering, on as much room as it takes. */
export function diagramScene(asked: SceneAsked): DiagramScene {
  const { input } = sourceOf(asked);
  const { drawn, heightMm } = uncut(asked);
  const { layout } = drawn;
  const strip = contactStrip(input, drawn.columnsOfPart, layout.widthMm);
  const marks = [...drawn.marks(), ...moveMarks(strip.marks, 0, heightMm + STRIP_GAP_MM)];
  const { scene, shiftMm } = framedScene("Whole diagram", marks);
  const originMm = { xMm: shiftMm.xMm, yMm: shiftMm.yMm + HEAD_MM };
  const graph = machineGraph(input.job);
  return {
    scene,
    layout,
    originMm,
    columns: columnsOf(layout, originMm),
    wires: wirePlaces(scene.marks),
    pins: pinPlaces(drawn, originMm),
    nodes: layout.nodes.map(({ id, xMm, yMm, meetsXMm }) => ({
      id,
      of: pointSubject(graph, id),
      at: { xMm: xMm + originMm.xMm, yMm: yMm + originMm.yMm },
      fromXMm: meetsXMm[0]! + originMm.xMm,
      toXMm: meetsXMm.at(-1)! + originMm.xMm,
    })),
  };
}

/** The lowest room in which every path stands whole; the tallest tried where none does. */
function uncut(asked: SceneAsked) {
  const { input } = sourceOf(asked);
  const lay = (heightMm: number) => ({
    heightMm,
    drawn: diagramDrawing(input, WIDE_MM, heightMm, 1),
  });
  let one = lay(HEIGHTS_MM[0]);
  for (const heightMm of HEIGHTS_MM.slice(1)) {
    if (one.drawn.layout.fits && one.drawn.layout.folds.length === 0) break;
    one = lay(heightMm);
  }
  return one;
}

function columnsOf(layout: DiagramLayout, originMm: PointMm): readonly DiagramColumn[] {
  return layout.columnXsMm.map((xMm, i) => ({
    index: i + 1,
    xMm: xMm + originMm.xMm,
    ids: layout.segments
      .filter(({ column }) => column === i)
      .sort((p, q) => p.topMm - q.topMm)
      .flatMap(({ segment }) => segment.items.map(({ id }) => id)),
  }));
}

/** Where the pins of parts, the halves of cavities and the ends of wires lie. */
function pinPlaces({ layout, behind }: DiagramDrawing, originMm: PointMm): DiagramScene["pins"] {
  const places = new Map<string, PointMm>();
  const put = (id: string, { xMm }: PlacedSegment, yMm: number): void => {
    places.set(id, { xMm: xMm + originMm.xMm, yMm: yMm + originMm.yMm });
  };
  for (const placed of layout.segments) {
    placed.segment.items.forEach(({ ref }, i) => {
      const { step } = behind[ref]!;
      const { topMm, bottomMm } = placed.items[i]!;
      if (step.kind === "part") {
        put(step.pinAbove, placed, topMm);
        put(step.pinBelow, placed, bottomMm);
      } else if (step.kind === "cavity") {
        const { pinA, pinB } = step.link;
        put(step.pinAbove, placed, topMm);
        put(step.pinAbove === pinA ? pinB : pinA, placed, bottomMm);
      } else if (step.kind === "terminal" || step.kind === "head") {
        put(step.point, placed, step.kind === "head" ? bottomMm : topMm);
      }
    });
  }
  return [...places].map(([id, at]) => ({ id, at })).sort((p, q) => (p.id < q.id ? -1 : 1));
}
