/** Refusals of a job whose parts do not fit one another: something is named that is not there, or named twice. */
export const refusalsOfReferences = {
  "duplicate-id": {
    message: '{place}: the id "{id}" is already taken by {other}.',
    remedy: "Give one of the two another id; {space}.",
  },
  "reserved-id": {
    message: '{place}: the id "{id}" is kept for the mass itself.',
    remedy: "Give the point another id.",
  },
  "unknown-pin-owner": {
    message:
      '{place} names the pin "{ref}", and there is no part, joint, connector or body "{owner}".',
    remedy: "{suggestion}",
  },
  "unknown-pin": {
    message: '{place} names the pin "{ref}", and {owner} has no pin "{pin}".',
    remedy: "{suggestion}",
  },
  "both-ends-one-pin": {
    message: '{place} begins and ends on the same pin, "{ref}".',
    remedy: "Put one of its ends where it really goes.",
  },
  "run-goes-nowhere": {
    message: '{place} begins and ends at the same station, "{station}".',
    remedy: "Name the station at its other end, or take the run away.",
  },
  "unknown-station": {
    message: '{place} names the station "{id}", and there is none.',
    remedy: "{suggestion}",
  },
  "unknown-run": {
    message: '{place} names the run "{id}", and there is none.',
    remedy: "{suggestion}",
  },
  "unknown-circuit": {
    message: '{place} names the circuit "{id}", and there is none.',
    remedy: "{suggestion}",
  },
  "unknown-loom": {
    message: '{place} names the loom "{id}", and there is none.',
    remedy: "{suggestion}",
  },
  "unknown-state": {
    message: '{place} names the state "{id}", and there is none.',
    remedy: "{suggestion}",
  },
  "unknown-own-pin": {
    message: '{place} names the pin "{id}", and {owner} has no such pin.',
    remedy: "{suggestion}",
  },
  "pair-on-one-pin": {
    message: '{place} lies between the pin "{id}" and itself.',
    remedy: "Name the two pins it really lies between.",
  },
  "fuse-pins": {
    message: "{place} has {pinCount} pins; a fuse has two.",
    remedy: "Give it one pin for each end. A fuse box is several fuses.",
  },
  "duplicate-load": {
    message:
      '{place}: two loads of this part are both called "{ref}", so nothing could tell them apart.',
    remedy: "Put the two together as one, or give them pins of their own.",
  },
  "unknown-own-position": {
    message: '{place} names the position "{id}", and {owner} has no such position.',
    remedy: "{suggestion}",
  },
  "unknown-switch": {
    message: '{place} names the switch "{id}", and there is none.',
    remedy: "{suggestion}",
  },
  "unknown-load": {
    message: '{place} names the load "{id}", and there is none.',
    remedy: "{suggestion}",
  },
  "on-and-off": {
    message: '{place}: the load "{id}" should work and be dead in the same state.',
    remedy: "Take it out of one of the two lists.",
  },
  "exclusion-of-everything": {
    message: "{place} names no switch and no engine mode, so it would rule out every state.",
    remedy: "Name the switches whose positions cannot meet, or take it away.",
  },
  "joint-without-ways": {
    message: "{place} has no ways, so nothing can be joined in it.",
    remedy: "List a way for each conductor, or take the joint away.",
  },
  "connector-without-cavities": {
    message: "{place} has no cavities, so nothing can pass through it.",
    remedy: "List its cavities, or take the connector away.",
  },
  "unknown-generator": {
    message: '{place} names the generator "{id}", and there is none.',
    remedy: "{suggestion}",
  },
  "layout-of-nothing": {
    message: '{place} keeps a place for "{id}", and there is nothing of that name.',
    remedy: "Take the entry out of the layout. {suggestion}",
  },
  "unknown-row": {
    message: '{place} is "{id}", and the table of {table} has no such row.',
    remedy: "{suggestion}",
  },
} as const;
