import {
  connectPins,
  insertJoint,
  type Job,
  moveWireEnd,
  type Operation,
  pinsOf,
  removeWithPlaces,
  resizeWire,
  setFuseRating,
  splitWireByConnector,
} from "../../job/index.ts";

/** One kind of edit: the operation on the k-th thing it can be done to; null where there is none. */
export type EditKind = (job: Job, k: number) => Operation | null;

const MAKES = ["thin-0.75", "thin-1.0", "thin-1.5", "thin-2.5", "thin-4.0"];
const RATINGS_A = [5, 7.5, 10, 15, 20, 30];
const COLOURS = ["red", "blue", "green", "white", "black"];

const nth = <T>(list: readonly T[], k: number): T | null =>
  list.length === 0 ? null : list[k % list.length]!;

const onJob = (path: readonly (string | number)[], value: unknown): Operation => ({
  op: "set",
  list: "job",
  path: [...path],
  value,
});

const onWire = (id: string, path: string, value: unknown): Operation => ({
  op: "set",
  list: "wires",
  id,
  path: [path],
  value,
});

/** Something else than what stands there, so that every edit is one. */
const another = <T>(list: readonly T[], now: T | undefined, k: number): T =>
  list.filter((one) => one !== now)[k % (list.length - 1)]!;

const wireOf = (job: Job, k: number): Job["wires"][number] => nth(job.wires, k)!;

/** Pins of parts and joints a wire may be put on. */
const openPins = (job: Job): readonly string[] =>
  [...pinsOf(job).values()]
    .filter(({ ownerKind }) => ownerKind !== "connector")
    .map(({ ref }) => ref);

/** Edits as they are made while a loom is drawn, by what is done. */
export const EDITS: Readonly<Record<string, EditKind>> = {
  "note of a wire": (job, k) => onWire(wireOf(job, k).id, "note", `seen to ${k}`),
  "colour of a wire": (job, k) => {
    const { id, colour } = wireOf(job, k);
    return onWire(id, "colour", { main: another(COLOURS, colour?.main, k) });
  },
  "place on the drawing": (job, k) => {
    const station = nth(job.stations, k);
    if (station === null) return null;
    return onJob(["layout", "side"], { ...job.layout.side, [station.id]: { xMm: k, yMm: 2 * k } });
  },
  "name of the job": (_, k) => onJob(["name"], `Job ${k}`),
  "name of a part": (job, k) => {
    const part = nth(job.parts, k);
    if (part === null) return null;
    return { op: "set", list: "parts", id: part.id, path: ["name"], value: `part ${k}` };
  },
  "size of a wire": (job, k) => {
    const { id, size } = wireOf(job, k);
    return resizeWire({ wire: id, make: another(MAKES, size?.make, k) });
  },
  "length of a wire": (job, k) => {
    const lengthMm = { value: 200 + 10 * (k % 90), basis: "measured" };
    return onWire(wireOf(job, k).id, "lengthMm", lengthMm);
  },
  "length of a run": (job, k) => {
    const run = nth(job.runs, k);
    if (run === null) return null;
    const value = { value: (run.lengthMm?.value ?? 300) + 5 + (k % 40), basis: "measured" };
    return { op: "set", list: "runs", id: run.id, path: ["lengthMm"], value };
  },
  "rating of a fuse": (job, k) => {
    const fuse = nth(
      job.parts.filter((part) => part.kind === "fuse"),
      k,
    );
    if (fuse === null) return null;
    return setFuseRating(fuse.id, another(RATINGS_A, fuse.ratingA, k));
  },
  "end of a wire moved": (job, k) => {
    const { id, from, to } = wireOf(job, k);
    const pins = openPins(job).filter((pin) => pin !== from && pin !== to);
    return moveWireEnd({ wire: id, end: k % 2 === 0 ? "to" : "from", pin: nth(pins, 7 * k)! });
  },
  "wire added": (job, k) => {
    const pins = openPins(job);
    const { circuit, loom } = wireOf(job, k);
    const [from, to] = [nth(pins, 3 * k)!, nth(pins, 3 * k + 11)!];
    return connectPins(job, { from, to, circuit, loom }).operation;
  },
  "wire removed": (job, k) => removeWithPlaces(job.layout, "wires", wireOf(job, k).id),
};

/** Rarer edits that change the shape of the loom, for the property alone. */
export const LARGER_EDITS: Readonly<Record<string, EditKind>> = {
  "joint put in": (job, k) => {
    const { id } = wireOf(job, k);
    const joint = { id: `JX${k}`, kind: "crimped-splice" as const, ways: ["a", "b"] };
    return insertJoint(job, { wire: id, joint, ways: ["a", "b"], newWire: `WX${k}` });
  },
  "split by a connector": (job, k) => {
    const kind = nth(job.connectors, k)?.kind;
    if (kind === undefined) return null;
    const connector = { id: `CX${k}`, name: `connector ${k}`, kind, cavities: ["1"] };
    const { id } = wireOf(job, k);
    return splitWireByConnector(job, { wire: id, connector, cavity: "1", newWire: `WY${k}` });
  },
  "end of a wire on another pin, its length kept": (job, k) => {
    const { id, from, to } = wireOf(job, k);
    const pins = openPins(job).filter((pin) => pin !== from && pin !== to);
    return onWire(id, k % 2 === 0 ? "to" : "from", nth(pins, 5 * k)!);
  },
  "status of a wire": (job, k) =>
    onWire(wireOf(job, k).id, "status", k % 2 === 0 ? "remove" : "keep"),
  "status of a part": (job, k) => {
    const part = nth(job.parts, k);
    if (part === null) return null;
    const value = k % 2 === 0 ? "remove" : "keep";
    return { op: "set", list: "parts", id: part.id, path: ["status"], value };
  },
  "covering of a loom": (job, k) => {
    const loom = nth(job.looms, k);
    if (loom === null) return null;
    const value = another(["pvc-sleeve", "tape", "open"], loom.covering as string, k);
    return { op: "set", list: "looms", id: loom.id, path: ["covering"], value };
  },
  "air of the job": (_, k) =>
    onJob(["decisions", "ambientC"], { value: 20 + (k % 30), basis: "chosen" }),
  "air of a station": (job, k) => {
    const station = nth(job.stations, k);
    if (station === null) return null;
    const value = another(["open", "near-engine", "exposed"], station.surroundings as string, k);
    return { op: "set", list: "stations", id: station.id, path: ["surroundings"], value };
  },
  "station of a part": (job, k) => {
    const part = nth(job.parts, k);
    const station = nth(job.stations, 5 * k);
    if (part === null || station === null) return null;
    return { op: "set", list: "parts", id: part.id, path: ["station"], value: station.id };
  },
  "limit of a drop": (_, k) =>
    onJob(["decisions", "dropLimits"], [{ dropClass: "headlamp", limitV: 0.2 + (k % 5) / 10 }]),
  "fuses' share": (_, k) => onJob(["decisions", "fuseLoadPercent"], 50 + (k % 40)),
  stock: (_, k) => onJob(["decisions", "stockMakes"], MAKES.slice(k % 3)),
  "class of a circuit": (job, k) => {
    const circuit = nth(job.circuits, k);
    if (circuit === null) return null;
    const value = another(["headlamp", "horn", "accessory"], circuit.dropClass as string, k);
    return { op: "set", list: "circuits", id: circuit.id, path: ["dropClass"], value };
  },
  "circuit of a wire": (job, k) =>
    onWire(wireOf(job, k).id, "circuit", nth(job.circuits, 3 * k)!.id),
  "terminal of a wire": (job, k) =>
    onWire(wireOf(job, k).id, "fromEnd", { joining: k % 2 ? "soldered" : "crimped" }),
  "note of a state": (job, k) => {
    const state = nth(job.states, k);
    if (state === null) return null;
    return { op: "set", list: "states", id: state.id, path: ["name"], value: `state ${k}` };
  },
  "note of an intent": (job, k) => {
    const intent = nth(job.intents, k);
    if (intent === null) return null;
    return { op: "set", list: "intents", id: intent.id, path: ["note"], value: `meant ${k}` };
  },
  "a contact's resistance": (job, k) => {
    const joint = nth(job.joints, k);
    if (joint === null) return null;
    const value = { value: 0.001 * (1 + (k % 9)), basis: "measured" };
    return { op: "set", list: "joints", id: joint.id, path: ["ohm"], value };
  },
  "earth of the machine": (job) =>
    onJob(
      ["supply", "earthPolarity"],
      job.supply.earthPolarity === "positive" ? "negative" : "positive",
    ),
};
