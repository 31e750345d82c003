import {
  addPosition,
  connectPins,
  freePin,
  healWires,
  idMaker,
  insertJoint,
  type Job,
  moveWireEnd,
  type NewWire,
  type Operation,
  type PartOf,
  removePosition,
  removeWhole,
  removeWithPlaces,
  renamePosition,
  resizeWire,
  splitWireByConnector,
  toggleContact,
} from "@copperwright/engine";

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

/** How a change of the wiring is done; asked of the engine in the worker. */
export function circuitsOperation(job: Job, change: CircuitsChange): Operation {
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
