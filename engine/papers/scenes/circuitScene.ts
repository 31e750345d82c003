import {
  area,
  type CircuitColumn,
  circuitSheet,
  type PointMm,
  type SheetHead,
} from "../../drawing/index.ts";
import { levelsOf } from "../circuit/levels.ts";
import { machineGraph } from "../circuit/machineGraph.ts";
import { wordedCircuit } from "../circuit/wordedCircuit.ts";
import { circuitPins } from "./circuitPins.ts";
import { framedScene, type Scene } from "./framedScene.ts";
import { type SceneAsked, sourceOf } from "./sceneSource.ts";
import { type WirePlace, wirePlaces } from "./wirePlaces.ts";

/** More room than any circuit takes, mm: nothing is cut, nothing goes to another sheet. */
const ROOM_MM = 1e5;

export interface CircuitScene {
  readonly scene: Scene;
  /** Title, and the state the volts are read in. */
  readonly head: SheetHead;
  /** Every current path step by step, as drawn from left to right. */
  readonly columns: readonly CircuitColumn[];
  readonly wires: readonly WirePlace[];
  /** Where pins lie: at the ends of the wires on them, else at their names; joints by their own id. */
  readonly pins: readonly { readonly id: string; readonly at: PointMm }[];
}

/** One circuit on one drawing, however wide. Null where there is no such circuit or nothing is in it. */
export function circuitScene(asked: SceneAsked, circuitId: string): CircuitScene | null {
  const input = sourceOf(asked).solved();
  const circuit = input.job.circuits.find(({ id }) => id === circuitId);
  if (circuit === undefined) return null;
  const graph = machineGraph(input.job);
  const worded = wordedCircuit(input, graph, levelsOf(graph), circuit);
  if (worded === null) return null;
  const { pages } = circuitSheet(worded.drawn, area(0, 0, ROOM_MM, ROOM_MM));
  const { scene } = framedScene(worded.head.title, pages.flat());
  const { head, drawn } = worded;
  const wires = wirePlaces(scene.marks);
  const pins = circuitPins(graph, drawn.columns, scene.marks, wires);
  return { scene, head, columns: drawn.columns, wires, pins };
}
