import { readFileSync } from "node:fs";
import { join } from "node:path";
import ELK, { type ElkEdgeSection, type ElkExtendedEdge, type ElkPoint } from "elkjs";
import { lineCrossings } from "../../engine/drawing/lineCrossings.fixture.ts";
import { readJob } from "../../engine/job/index.ts";
import { checkedJob } from "../../engine/judge/index.ts";
import { machineGraph } from "../../engine/papers/circuit/machineGraph.ts";
import { diagramSheet } from "../../engine/papers/diagram/diagramSheets.ts";
import { paperInput } from "../../engine/papers/index.ts";
import { ROOT } from "../sourceFiles.ts";

const DEMOS = ["aldreth-single", "orivesta-enduro", "minazuru-four", "brenzach-twin"];
const BOX = { width: 24, height: 14 } as const;
const REPEATS = 5;

type Segment = readonly [ElkPoint, ElkPoint];

/** The machine as a general graph: a node for each part, joint and connector, an edge for each wire; as in ours every wire to a body has its own earth. */
function graphOf(job: Parameters<typeof machineGraph>[0]) {
  const { links, bodies } = machineGraph(job);
  const owner = (pin: string, wire: string): string => {
    const id = pin.slice(0, pin.indexOf("."));
    return bodies.has(id) ? `${id} ${wire}` : id;
  };
  const wires = links
    .filter(({ kind }) => kind === "wire")
    .map(({ of, pinA, pinB }) => ({ id: of, from: owner(pinA, of), to: owner(pinB, of) }));
  const nodes = [...new Set(wires.flatMap(({ from, to }) => [from, to]))];
  return {
    id: "root",
    layoutOptions: {
      "elk.algorithm": "layered",
      "elk.direction": "DOWN",
      "elk.edgeRouting": "ORTHOGONAL",
      "elk.layered.thoroughness": "100",
      "elk.randomSeed": "1",
    },
    children: nodes.map((id) => ({ id, ...BOX })),
    edges: wires.map(({ id, from, to }) => ({ id, sources: [from], targets: [to] })),
  };
}

const segmentsOf = ({ startPoint, bendPoints = [], endPoint }: ElkEdgeSection): Segment[] => {
  const points = [startPoint, ...bendPoints, endPoint];
  return points.slice(1).map((b, i) => [points[i]!, b] as const);
};

/** Pairs of edges of which one runs across the other. */
function crossingsOf(edges: readonly ElkExtendedEdge[]): number {
  const lines = edges.map(({ sections = [] }) => sections.flatMap(segmentsOf));
  let count = 0;
  lines.forEach((first, i) => {
    for (const second of lines.slice(0, i)) {
      if (first.some((a) => second.some((b) => isAcross(a, b)))) count++;
    }
  });
  return count;
}

function isAcross([a, b]: Segment, [c, d]: Segment): boolean {
  const side = (p: ElkPoint, q: ElkPoint, r: ElkPoint): number =>
    (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return side(a, b, c) * side(a, b, d) < -1e-6 && side(c, d, a) * side(c, d, b) < -1e-6;
}

/** The whole diagram beside a general layered layout of the same machine: lines across lines, and time. */
export async function run() {
  const figures = [];
  for (const name of DEMOS) {
    const read = readJob(readFileSync(join(ROOT, "demos", `${name}.json`), "utf8"));
    if (!read.ok) throw new Error(name);
    const { design, result } = checkedJob(read.job);
    const input = paperInput(design, result, { fingerprint: "", paper: "a4" });
    const spentMs = Array.from({ length: REPEATS }, () => {
      const from = performance.now();
      diagramSheet(input, "a2");
      return performance.now() - from;
    });
    const { sheet, layout } = diagramSheet(input, "a2");
    const laid = await new ELK().layout(graphOf(design.job));
    const wires = `${name}, ${design.job.wires.length} wires`;
    const told = layout.segments.filter((segment) => segment.told !== null).length;
    figures.push(
      {
        name: `${wires}: crossings`,
        value: lineCrossings(sheet.marks).length,
        unit: "",
        target: 5,
      },
      { name: `${wires}: joins told in words`, value: told, unit: "" },
      { name: `${wires}: paths cut to the sheet`, value: layout.folds.length, unit: "" },
      {
        name: `${wires}: crossings of a general layered layout`,
        value: crossingsOf((laid.edges ?? []) as ElkExtendedEdge[]),
        unit: "",
      },
      {
        name: `${wires}: A2 sheet, quickest of ${REPEATS}`,
        value: Math.min(...spentMs),
        unit: "ms",
        target: 100,
      },
    );
  }
  return figures;
}
