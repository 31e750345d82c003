import {
  batteriesOf,
  connectorCavityPins,
  HUB,
  type Job,
  mainEarthBody,
  type Part,
  pinRef,
} from "../job/index.ts";

/** A job and the parts of it that meet only at the posts of the battery and the hub of the main body. */
export interface IndependentJobs {
  /** Each with what is common to all; a single one (the job itself) where it does not fall apart. */
  readonly jobs: readonly Job[];
  /** Wires every one of them has: between a post and the hub, with nothing to switch or to load on the way. */
  readonly common: ReadonlySet<string>;
}

/** Without these a group only joins, and cannot make a state of its own. */
const JOINING: ReadonlySet<Part["kind"]> = new Set(["battery", "fuse"]);

/**
 * Divides a job where only a firm supply joins its circuits: with the battery's posts and the main body's hub taken out, what
 * still hangs together is a group. What no group holds alone (the battery and its earth lead) goes to every one of them. States
 * of one group change the others by no more than the volts lost in what they have in common.
 * Switches that intents or exclusions name together stay together.
 */
export function independentJobs(job: Job): IndependentJobs {
  const undivided = { jobs: [job], common: new Set<string>() };
  const batteries = batteriesOf(job);
  if (batteries.length !== 1) return undivided;
  const body = mainEarthBody(job);
  const { livePost, earthedPost } = batteries[0]!;
  const rails = new Set([livePost, earthedPost, ...(body ? [pinRef(body.id, HUB)] : [])]);
  const union = joinedPins(job, rails);
  const groupOf = (pin: string): string | null => (rails.has(pin) ? null : union.rootOf(pin));
  const active = new Set(
    job.parts
      .filter(({ kind }) => !JOINING.has(kind))
      .flatMap((part) => part.pins.slice(0, 1).map(({ id }) => union.rootOf(pinRef(part.id, id)))),
  );
  if (active.size < 2) return undivided;
  const isOf = (pins: readonly string[]): string => {
    const group = pins.map(groupOf).find((one) => one !== null) ?? null;
    return group !== null && active.has(group) ? group : COMMON;
  };
  return divided(job, [...active].sort(), isOf);
}

const COMMON = "";

interface Union {
  readonly rootOf: (pin: string) => string;
}

function joinedPins(job: Job, rails: ReadonlySet<string>): Union {
  const parent = new Map<string, string>();
  const rootOf = (pin: string): string => {
    let root = pin;
    for (let up = parent.get(root); up !== undefined; up = parent.get(root)) root = up;
    for (let at = pin; at !== root; ) {
      const up = parent.get(at)!;
      parent.set(at, root);
      at = up;
    }
    return root;
  };
  const join = (pins: readonly (string | undefined)[]): void => {
    const free = pins.filter((pin) => pin !== undefined && !rails.has(pin)) as string[];
    for (const pin of free.slice(1)) {
      const [one, other] = [rootOf(free[0]!), rootOf(pin)];
      if (one !== other) parent.set(one, other);
    }
  };
  const firstPin = firstPins(job);
  const main = mainEarthBody(job)?.id;
  for (const { id, pins } of job.parts) join(pins.map((pin) => pinRef(id, pin.id)));
  for (const { id, ways } of job.joints) join(ways.map((way) => pinRef(id, way)));
  for (const one of job.connectors) {
    for (const { plug, socket } of connectorCavityPins(one)) join([plug, socket]);
  }
  for (const { id, points } of job.bodies) {
    if (id !== main) join([pinRef(id, HUB), ...points.map((point) => pinRef(id, point.id))]);
  }
  for (const { from, to } of [...job.wires, ...job.bonds]) join([from, to]);
  for (const part of job.parts) {
    if (part.kind === "generator") join([firstPin.get(part.id), part.case]);
    if (part.kind === "regulator" && part.generator !== undefined) {
      join([firstPin.get(part.id), firstPin.get(part.generator)]);
    }
  }
  for (const { load, when } of job.intents) {
    const parts = [partOfLoad(load), ...when.flatMap((way) => Object.keys(way.positions))];
    join(parts.map((id) => firstPin.get(id)));
  }
  for (const { positions } of job.exclusions) {
    join(Object.keys(positions).map((id) => firstPin.get(id)));
  }
  return { rootOf };
}

const partOfLoad = (load: string): string => load.slice(0, load.indexOf(":"));

/** A pin that stands for each part: all pins of a part are of one group. */
const firstPins = (job: Job): ReadonlyMap<string, string> =>
  new Map(
    job.parts.flatMap(({ id, pins }) =>
      pins.slice(0, 1).map((pin) => [id, pinRef(id, pin.id)] as const),
    ),
  );

/** Shares everything out by group in one pass over the job. */
function divided(
  job: Job,
  groups: readonly string[],
  isOf: (pins: readonly string[]) => string,
): IndependentJobs {
  const shared = <T>(items: readonly T[], pinsOfItem: (item: T) => readonly string[]) => {
    const byGroup = new Map<string, T[]>();
    for (const item of items) {
      const group = isOf(pinsOfItem(item));
      const list = byGroup.get(group);
      if (list === undefined) byGroup.set(group, [item]);
      else list.push(item);
    }
    const common = byGroup.get(COMMON) ?? [];
    return (group: string): readonly T[] => [...common, ...(byGroup.get(group) ?? [])];
  };
  const ends = ({ from, to }: { readonly from: string; readonly to: string }) => [from, to];
  const parts = shared(job.parts, ({ id, pins }) => pins.map((pin) => pinRef(id, pin.id)));
  const joints = shared(job.joints, ({ id, ways }) => ways.map((way) => pinRef(id, way)));
  const connectors = shared(job.connectors, (one) =>
    connectorCavityPins(one).map(({ plug }) => plug),
  );
  const wires = shared(job.wires, ends);
  const bonds = shared(job.bonds, ends);
  const points = shared(
    job.bodies.flatMap(({ id, points: own }) => own.map((point) => ({ body: id, point }))),
    ({ body, point }) => [pinRef(body, point.id)],
  );
  const firstPin = firstPins(job);
  const intents = shared(job.intents, ({ load }) => [firstPin.get(partOfLoad(load)) ?? ""]);
  const jobs = groups.map((group): Job => {
    const kept = new Map(
      job.bodies.map(({ id }) => [id, [] as Job["bodies"][number]["points"][number][]]),
    );
    for (const { body, point } of points(group)) kept.get(body)!.push(point);
    return {
      ...job,
      parts: [...parts(group)],
      joints: [...joints(group)],
      connectors: [...connectors(group)],
      wires: [...wires(group)],
      bonds: [...bonds(group)],
      intents: [...intents(group)],
      bodies: job.bodies.map((body) => ({ ...body, points: kept.get(body.id)! })),
    };
  });
  return { jobs, common: new Set(wires(COMMON).map(({ id }) => id)) };
}
