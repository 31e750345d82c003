import {
  connectorKinds,
  type ListedPattern,
  listedPatterns,
  type Operation,
  type PatternMade,
  patternOperation,
  type TemplateAnswers,
  type WireFacts,
  wireFacts,
} from "@copperwright/engine";
import {
  circuitScene,
  diagramScene,
  machineRuleOf,
  type Neighbour,
  neighboursOf,
  type PointMm,
  type WirePlace,
} from "@copperwright/engine/scenes";
import { type Picture, pictureOf } from "../../drawing/picture.ts";
import type { Held } from "../../engine/held.ts";
import type { RuleMark } from "../../frame/ruleMarks.ts";
import { type CircuitsChange, circuitsOperation } from "./circuitsOperation.ts";

/** A drawing of wiring with the places on it a hand can take hold of. */
export interface DiagramView {
  readonly picture: Picture;
  readonly title: string;
  /** Every drawn piece of a wire, for a hand that is wider than the wire. */
  readonly wires: readonly WirePlace[];
  /** Pins, and joints and bodies by their own id. */
  readonly places: readonly { readonly id: string; readonly at: PointMm }[];
}

export const circuitsAnswers = {
  /** The whole machine, or one circuit; null where nothing is in that circuit. */
  circuitsDiagram(held: Held, { circuit }: { circuit: string | null }): DiagramView | null {
    if (circuit !== null) {
      const drawn = circuitScene(held.scenes(), circuit);
      if (drawn === null) return null;
      return {
        picture: pictureOf(drawn.scene),
        title: drawn.head.title,
        wires: drawn.wires,
        places: drawn.pins,
      };
    }
    const drawn = diagramScene(held.scenes());
    const joined = drawn.nodes.filter(({ of }) => of !== "pin").map(({ id, at }) => ({ id, at }));
    return {
      picture: pictureOf(drawn.scene),
      title: "Whole machine",
      wires: drawn.wires,
      places: [...drawn.pins, ...joined],
    };
  },

  circuitsWire: (held: Held, wire: string): WireFacts | null => wireFacts(held.checked(), wire),

  circuitsNeighbours: (held: Held, thing: { kind: string; id: string }): readonly Neighbour[] =>
    neighboursOf(held.job, thing),

  /** Where a wire runs, for the rule: its number over its way. */
  circuitsRule(held: Held, wire: string): readonly RuleMark[] {
    const facts = wireFacts(held.checked(), wire);
    const stations = machineRuleOf(held.scenes()).stations;
    const at = stations.filter(({ id }) => facts?.stations.includes(id)).map(({ atMm }) => atMm);
    if (at.length === 0) return [];
    const number = held.job.wires.find(({ id }) => id === wire)?.number ?? wire;
    return [{ fromMm: Math.min(...at), text: `wire ${number}`, tone: "verdigris" }];
  },

  circuitsChange: (held: Held, change: CircuitsChange): Operation =>
    circuitsOperation(held.job, change),

  circuitsConnectorKinds: (_held: Held, _none: null) => connectorKinds(),

  circuitsPatterns: (_held: Held, _none: null): readonly ListedPattern[] => listedPatterns(),

  circuitsPattern: (
    held: Held,
    { id, text, figures }: { id: string; text: Record<string, string>; figures: TemplateAnswers },
  ): PatternMade => patternOperation(held.job, id, text, figures),
};
