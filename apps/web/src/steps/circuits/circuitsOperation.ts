import {
  addPosition,
  connectPins,
  freePin,
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
  toggleContact,
} from "@copperwright/engine";

/** Everything Circuits changes, as the operation that does it. */
export type CircuitsChange =
  | { readonly does: "connect"; readonly wire: NewWire }
  | {
      readonly does: "move-end";
      readonly wire: string;
      readonly end: "from" | "to";
      readonly pin: string;
    }
  | { readonly does: "size"; readonly wire: string; readonly make: string | null }
  | { readonly does: "remove-wire"; readonly wire: string }
  | { readonly does: "remove-part"; readonly id: string }
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
    case "remove-part":
      return removeWhole(job, "parts", change.id);
    default:
      return tableChange(job, change);
  }
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
