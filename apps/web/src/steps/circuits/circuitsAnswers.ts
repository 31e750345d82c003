import {
  addPosition,
  type CheckedJob,
  connectorKinds,
  connectPins,
  freePin,
  healWires,
  idMaker,
  insertJoint,
  type Job,
  type ListedPattern,
  listedPatterns,
  moveWireEnd,
  type NewWire,
  type Operation,
  type PartOf,
  type PatternMade,
  patternOperation,
  removePosition,
  removeWhole,
  removeWithPlaces,
  renamePosition,
  resizeWire,
  splitWireByConnector,
  type TemplateAnswers,
  toggleContact,
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
  type SceneSource,
  sceneSource,
  type WirePlace,
} from "@copperwright/engine/scenes";
import { type Picture, type PictureLight, pictureOf } from "../../drawing/picture.ts";
import type { Held } from "../../engine/held.ts";
import type { RuleMark } from "../../frame/ruleMarks.ts";

/** A drawing of wiring with the places on it a hand can take hold of. */
export interface DiagramView {
  readonly picture: Picture;
  readonly title: string;
  /** Every drawn piece of a wire, for a hand that is wider than the wire. */
  readonly wires: readonly WirePlace[];
  /** Pins, and joints and bodies by their own id. */
  readonly places: readonly { readonly id: string; readonly at: PointMm }[];
}

/** Everything Circuits changes, as the operation that does it. */
export type CircuitsChange =
  | { readonly does: "connect"; readonly wire: NewWire }
  | {
      readonly does: "split";
      readonly wire: string;
      readonly kind: string;
      readonly station: string | null;
      readonly into: string | null;
    }
  | {
      readonly does: "join";
      readonly wire: string;
      readonly kind: Job["joints"][number]["kind"];
      readonly station: string | null;
    }
  | {
      readonly does: "move-end";
      readonly wire: string;
      readonly end: "from" | "to";
      readonly pin: string;
    }
  | { readonly does: "size"; readonly wire: string; readonly make: string | null }
  | { readonly does: "remove-wire"; readonly wire: string }
  | {
      readonly does: "remove";
      readonly list: "parts" | "joints" | "connectors";
      readonly id: string;
    }
  | {
      readonly does: "contact";
      readonly part: string;
      readonly position: string;
      readonly a: string;
      readonly b: string;
    }
  | { readonly does: "add-position"; readonly part: string; readonly name: string }
  | {
      readonly does: "rename-position";
      readonly part: string;
      readonly position: string;
      readonly name: string;
    }
  | { readonly does: "remove-position"; readonly part: string; readonly position: string };

let source: { readonly of: CheckedJob; readonly source: SceneSource } | null = null;

/** One source for all drawings of the same check. */
function sourceOf(held: Held): SceneSource {
  const checked = held.checked();
  if (source?.of !== checked) source = { of: checked, source: sceneSource(checked) };
  return source.source;
}

export const circuitsAnswers = {
  /** The whole machine, or one circuit; null where nothing is in that circuit. */
  circuitsDiagram(
    held: Held,
    { circuit, light }: { circuit: string | null; light: PictureLight },
  ): DiagramView | null {
    if (circuit !== null) {
      const drawn = circuitScene(sourceOf(held), circuit);
      if (drawn === null) return null;
      return {
        picture: pictureOf(drawn.scene, light),
        title: drawn.head.title,
        wires: drawn.wires,
        places: [],
      };
    }
    const drawn = diagramScene(sourceOf(held));
    const joined = drawn.nodes.filter(({ of }) => of !== "pin").map(({ id, at }) => ({ id, at }));
    return {
      picture: pictureOf(drawn.scene, light),
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
    const stations = machineRuleOf(sourceOf(held)).stations;
    const at = stations.filter(({ id }) => facts?.stations.includes(id)).map(({ atMm }) => atMm);
    if (at.length === 0) return [];
    const number = held.job.wires.find(({ id }) => id === wire)?.number ?? wire;
    return [{ fromMm: Math.min(...at), text: `wire ${number}`, tone: "verdigris" }];
  },

  circuitsChange: (held: Held, change: CircuitsChange): Operation => operationOf(held.job, change),

  circuitsConnectorKinds: (_held: Held, _none: null) => connectorKinds(),

  circuitsPatterns: (_held: Held, _none: null): readonly ListedPattern[] => listedPatterns(),

  circuitsPattern: (
    held: Held,
    { id, text, figures }: { id: string; text: Record<string, string>; figures: TemplateAnswers },
  ): PatternMade => patternOperation(held.job, id, text, figures),
};

function operationOf(job: Job, change: CircuitsChange): Operation {
  switch (change.does) {
    case "connect":
      return connectPins(job, change.wire).operation;
    case "split":
      return splitOf(job, change);
    case "join":
      return joinOf(job, change);
    case "move-end": {
      const { pin, operations } = freePin(job, change.pin);
      const move = moveWireEnd({ ...change, pin });
      return { op: "batch", name: `Move to ${pin}`, operations: [...operations, move] };
    }
    case "size":
      return resizeWire({
        wire: change.wire,
        ...(change.make === null ? {} : { make: change.make }),
      });
    case "remove-wire":
      return removeWithPlaces(job.layout, "wires", change.wire);
    case "remove":
      return removalOf(job, change);
    default:
      return tableChange(job, change);
  }
}

/** A joint or plug with two wires at each place is taken out and the wires made whole; anything else goes with what hangs on it. */
function removalOf(job: Job, { list, id }: Extract<CircuitsChange, { does: "remove" }>): Operation {
  const healed = list === "parts" ? null : healWires(job, list, id);
  return healed ?? removeWhole(job, list, id);
}

function splitOf(job: Job, change: Extract<CircuitsChange, { does: "split" }>): Operation {
  const nextId = idMaker(job);
  const known = job.connectors.find(({ id }) => id === change.into);
  const used = new Set(job.wires.flatMap(({ from, to }) => [from, to]));
  const free = known?.cavities.find(
    (cavity) => !used.has(`${known.id}.${cavity}p`) && !used.has(`${known.id}.${cavity}s`),
  );
  const connector = known ?? {
    id: nextId("X"),
    name: "connector",
    kind: change.kind,
    cavities: ["1", "2"],
    status: "new" as const,
    ...(change.station === null ? {} : { station: change.station }),
  };
  const cavity = free ?? "1";
  return splitWireByConnector(job, { wire: change.wire, connector, cavity, newWire: nextId("W") });
}

function joinOf(job: Job, change: Extract<CircuitsChange, { does: "join" }>): Operation {
  const nextId = idMaker(job);
  const joint = {
    id: nextId("J"),
    kind: change.kind,
    ways: ["1", "2", "3"],
    status: "new" as const,
    ...(change.station === null ? {} : { station: change.station }),
  };
  return insertJoint(job, { wire: change.wire, joint, ways: ["1", "2"], newWire: nextId("W") });
}

type TableChange = Extract<CircuitsChange, { readonly part: string }>;

function tableChange(job: Job, change: TableChange): Operation {
  const part = job.parts.find(
    (one): one is PartOf<"switch"> => one.id === change.part && one.kind === "switch",
  );
  if (part === undefined) throw new Error(`${change.part} is no switch`);
  switch (change.does) {
    case "contact":
      return toggleContact(part, change);
    case "add-position": {
      const taken = new Set(part.positions.map(({ id }) => id));
      const stem = change.name
        .toUpperCase()
        .replace(/[^A-Z0-9]+/g, "-")
        .replace(/^-+|-+$/g, "");
      const first = stem.slice(0, 24) || "POS";
      let id = first;
      for (let n = 2; taken.has(id); n++) id = `${first}${n}`;
      return addPosition(part, id, change.name);
    }
    case "rename-position":
      return renamePosition(part, change.position, change.name);
    case "remove-position":
      return removePosition(part, change.position);
  }
}
