import type { EditedList } from "../edit/operation.ts";

/**
 * How deep two people's changes may be mixed.
 *
 * - `whole`: one of the two, never a mixture. A length and who measured it belong together; so do a reading and its unit, a colour and
 *   its tracer, an acceptance and its reason.
 * - `fields`: each named field by itself; a field not named here is `whole`. With `oneKind`, only while both have the same `kind`.
 * - `each`: a map, each key by itself. `items`: a list of things with ids, each by itself. `ids`: a list of bare ids as a set.
 */
export type Shape =
  | { readonly as: "whole" }
  | {
      readonly as: "fields";
      readonly fields: Readonly<Record<string, Shape>>;
      readonly oneKind?: boolean;
    }
  | { readonly as: "each"; readonly of: Shape }
  | { readonly as: "items"; readonly of: Shape; readonly keepsOrder: boolean }
  | { readonly as: "ids" };

export const WHOLE: Shape = { as: "whole" };
const FIELDS: Shape = { as: "fields", fields: {} };
const MAP: Shape = { as: "each", of: WHOLE };
const inOrder = (of: Shape): Shape => ({ as: "items", of, keepsOrder: true });
const byId = (of: Shape): Shape => ({ as: "items", of, keepsOrder: false });

/** Of one item of each list. */
export const ITEM_SHAPES: Readonly<Record<EditedList, Shape>> = {
  stations: FIELDS,
  runs: FIELDS,
  bodies: { as: "fields", fields: { points: byId(FIELDS) } },
  bonds: FIELDS,
  parts: {
    as: "fields",
    fields: { pins: inOrder(FIELDS), positions: inOrder(FIELDS) },
    oneKind: true,
  },
  joints: { as: "fields", fields: { ways: { as: "ids" } } },
  connectors: { as: "fields", fields: { cavities: { as: "ids" } } },
  circuits: FIELDS,
  looms: FIELDS,
  wires: FIELDS,
  intents: FIELDS,
  states: FIELDS,
  // A combination that cannot happen is one statement with its reason: half of each person's would be nobody's.
  exclusions: WHOLE,
  build: WHOLE,
  tests: WHOLE,
  attachments: WHOLE,
};

/** Of what is in no list. */
export const JOB_SHAPES: Readonly<Record<string, Shape>> = {
  machine: FIELDS,
  supply: FIELDS,
  colours: FIELDS,
  decisions: { as: "fields", fields: { allowances: FIELDS, accepted: byId(WHOLE) } },
  layout: { as: "fields", fields: { side: MAP, diagram: MAP, board: MAP } },
};
