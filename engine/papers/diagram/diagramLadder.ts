import type { Job } from "../../job/index.ts";
import type { Ladder, LadderNode, LadderSegment } from "../../layout/index.ts";
import { bare } from "./crossLinks.ts";
import type { ItemMaker } from "./diagramItems.ts";
import { baseLines, DIAGRAM_CAP_MM, lettered, linesWidthMm } from "./diagramLettering.ts";
import type { DiagramNode, DiagramSegment, DiagramStep } from "./diagramStep.ts";
import type { MachinePaths } from "./machinePaths.ts";

/** Before everything that stands at a place: what drives comes first. */
const SOURCE_RANK = -1e6;
/** After everything that stands at a place. */
const LAST_RANK = 1e6;
const TOLD_MM = 11;

/** The paths of a machine as the layout wants them: sizes, what stands low, and the wished order from front to rear. */
export function diagramLadder(
  job: Job,
  paths: MachinePaths,
  make: ItemMaker,
  heightMm: number,
): Ladder {
  const placeOf = stationOrder(job);
  const ofParts = pointsOfParts(paths);
  const isGathering = ({ from, to, steps }: DiagramSegment): boolean =>
    from === null && to === null && steps.every(({ kind }) => kind !== "part");
  const gathering = paths.segments.filter(isGathering);
  return {
    nodes: paths.nodes.map((node) => ladderNode(node, nodeName(node.id, ofParts.has(node.id)))),
    segments: [
      ...paths.segments
        .filter((segment) => !isGathering(segment))
        .map((segment) => ladderSegment(segment, make, placeOf)),
      ...stacked(
        gathering.map((segment) => ladderSegment(segment, make, () => LAST_RANK)),
        heightMm,
      ),
    ],
  };
}

/** Short paths from gathered earths to the frame, as many under each other as the height holds. */
function stacked(segments: readonly LadderSegment[], heightMm: number): LadderSegment[] {
  const stacks: LadderSegment[] = [];
  let leftMm = 0;
  for (const segment of segments) {
    const neededMm = segment.items.reduce((sum, { boxes }) => sum + boxes[0].heightMm, 0);
    const before = stacks.at(-1);
    if (before !== undefined && neededMm <= leftMm) {
      stacks[stacks.length - 1] = { ...before, items: [...before.items, ...segment.items] };
      leftMm -= neededMm;
    } else {
      stacks.push(segment);
      leftMm = heightMm - neededMm;
    }
  }
  return stacks;
}

/** Points at which a part's own symbol stands, so that its pin need not say whose it is. */
export const pointsOfParts = ({ segments }: MachinePaths): ReadonlySet<string> =>
  new Set(
    segments.flatMap(({ from, to, steps }) => {
      const [first, last] = [steps[0], steps.at(-1)];
      return [
        ...(from !== null && first?.kind === "part" ? [from] : []),
        ...(to !== null && last?.kind === "part" ? [to] : []),
      ];
    }),
  );

function ladderNode({ id, isRail, isLow }: DiagramNode, text: string): LadderNode {
  if (isRail) {
    return { id, isLow, toldMm: 0, label: { heightMm: 0, leftMm: 1.4, rightMm: 1.4 } };
  }
  const name = lettered(text, DIAGRAM_CAP_MM.text, 700);
  return {
    id,
    isLow,
    toldMm: TOLD_MM,
    label: {
      heightMm: baseLines([name]).heightMm,
      leftMm: 1.6 + linesWidthMm([name]),
      rightMm: 1.4,
    },
  };
}

export const nodeName = (id: string, isAtPart: boolean): string =>
  isAtPart ? bare(id) : id.replace(".", " ");

function ladderSegment(
  { id, from, to, steps }: DiagramSegment,
  make: ItemMaker,
  placeOf: (step: DiagramStep) => number,
): LadderSegment {
  const load = steps.findIndex(isLoad);
  const lowFrom = to !== null ? -1 : load >= 0 ? load : lastFoot(steps);
  const isOwn = from !== null || load >= 0;
  const items = steps.map((step, i) => make.item(step, isOwn && lowFrom >= 0 && i >= lowFrom));
  return { id, from, to, items, rank: Math.min(...steps.map(placeOf)) };
}

/** Where no load stands in a path its foot alone stands low. */
const lastFoot = (steps: readonly DiagramStep[]): number =>
  steps.findLastIndex(({ kind }) => kind === "earth" || kind === "terminal");

const isLoad = (step: DiagramStep): boolean =>
  step.kind === "part" && ["load", "coil", "source"].includes(step.link.kind);

/** From front to rear by the side view where the job has one, else by the order of its places; what drives stands before all. */
function stationOrder(job: Job): (step: DiagramStep) => number {
  const order = new Map(
    job.stations.map(({ id }, i) => [id, job.layout?.side?.[id]?.xMm ?? i] as const),
  );
  return (step) => {
    if (step.kind !== "part") return Number.POSITIVE_INFINITY;
    if (step.link.kind === "source") return SOURCE_RANK;
    if (!isLoad(step)) return Number.POSITIVE_INFINITY;
    return order.get(step.link.part?.station ?? "") ?? Number.POSITIVE_INFINITY;
  };
}
