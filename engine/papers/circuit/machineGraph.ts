import {
  batteriesOf,
  connectorCavityPins,
  type Job,
  loadsOfPart,
  type Part,
  pinRef,
  type Wire,
} from "../../job/index.ts";

/** What lies between two points of the machine. */
export type LinkKind =
  | "wire"
  /** Both halves of one cavity. */
  | "cavity"
  | "contact"
  | "fuse"
  /** A meter, a diode: passed like a wire, but drawn. */
  | "through"
  /** Light, heat, spark, motion. */
  | "load"
  /** A relay's coil, a flasher's own supply. */
  | "coil"
  /** Battery, generator winding, regulator: drives, is not passed. */
  | "source"
  | "bond";

export interface Link {
  readonly kind: LinkKind;
  /** Unique in the graph. */
  readonly key: string;
  /** Wire, part, connector or bond. */
  readonly of: string;
  readonly a: string;
  readonly b: string;
  /** The pins themselves, where points are merged. */
  readonly pinA: string;
  readonly pinB: string;
  readonly wire?: Wire;
  readonly part?: Part;
  /** Of a contact: closed when nobody touches it. */
  readonly closedAtRest?: boolean;
}

/** A machine as points and what joins them. The ways of a joint are one point, and so is everything bolted to one body. */
export interface MachineGraph {
  readonly links: readonly Link[];
  readonly linksAt: ReadonlyMap<string, readonly Link[]>;
  readonly pointOf: (pin: string) => string;
  readonly joints: ReadonlySet<string>;
  readonly bodies: ReadonlySet<string>;
  readonly livePosts: readonly string[];
  readonly earthedPosts: readonly string[];
  /** The live pole is the negative one: current comes to it. */
  readonly isLiveNegative: boolean;
  /** Where generators give their current. */
  readonly windingPins: readonly string[];
}

export function machineGraph(job: Job): MachineGraph {
  const joints = new Set(job.joints.map((joint) => joint.id));
  const bodies = new Set(job.bodies.map((body) => body.id));
  const pointOf = (pin: string): string => {
    const owner = pin.slice(0, pin.indexOf("."));
    return joints.has(owner) || bodies.has(owner) ? owner : pin;
  };
  const drafts = [
    ...job.wires.map((wire): Draft => ["wire", wire.id, wire.from, wire.to, { wire }]),
    ...job.connectors.flatMap((connector) =>
      connectorCavityPins(connector).map(
        ({ plug, socket }): Draft => ["cavity", connector.id, plug, socket, {}],
      ),
    ),
    ...job.bonds.map((bond): Draft => ["bond", bond.id, bond.from, bond.to, {}]),
    ...job.parts.flatMap((part) => partDrafts(part)),
  ];
  const links = drafts.map(
    ([kind, of, pinA, pinB, more], i): Link => ({
      kind,
      key: `${kind} ${of} ${i}`,
      of,
      a: pointOf(pinA),
      b: pointOf(pinB),
      pinA,
      pinB,
      ...more,
    }),
  );
  const linksAt = new Map<string, Link[]>();
  for (const link of links) {
    for (const at of new Set([link.a, link.b])) linksAt.set(at, [...(linksAt.get(at) ?? []), link]);
  }
  const posts = batteriesOf(job);
  return {
    links,
    linksAt,
    pointOf,
    joints,
    bodies,
    livePosts: posts.map(({ livePost }) => livePost),
    earthedPosts: posts.map(({ earthedPost }) => earthedPost),
    isLiveNegative: job.supply.earthPolarity === "positive",
    windingPins: job.parts.flatMap(windingPins),
  };
}

function windingPins(part: Part): readonly string[] {
  if (part.kind !== "generator") return [];
  return part.windings
    .filter(({ use }) => use !== "field" && use !== "pickup")
    .flatMap(({ pins }) => pins.map((pin) => pinRef(part.id, pin)));
}

type Draft = readonly [
  kind: LinkKind,
  of: string,
  pinA: string,
  pinB: string,
  more: Pick<Link, "wire" | "part" | "closedAtRest">,
];

function partDrafts(part: Part): readonly Draft[] {
  const draft = (kind: LinkKind, a: string, b: string, closedAtRest?: boolean): Draft => [
    kind,
    part.id,
    pinRef(part.id, a),
    pinRef(part.id, b),
    { part, ...(closedAtRest === undefined ? {} : { closedAtRest }) },
  ];
  const loads = loadsOfPart(part).map(
    ({ pins: [a, b] }): Draft => ["load", part.id, a, b, { part }],
  );
  switch (part.kind) {
    case "fuse":
      return [draft("fuse", part.pins[0]!.id, part.pins[1]!.id)];
    case "switch":
      return contactPairs(part).map(([a, b, atRest]) => draft("contact", a, b, atRest));
    case "relay":
      return [
        draft("coil", ...part.coil.pins),
        ...part.made.map(([a, b]) => draft("contact", a, b, false)),
        ...part.rest.map(([a, b]) => draft("contact", a, b, true)),
      ];
    case "flasher":
      return [
        draft("contact", part.feed, part.out, false),
        ...(part.earth === undefined ? [] : [draft("coil", part.feed, part.earth)]),
      ];
    case "meter":
      return [draft(part.measures === "amps" ? "through" : "load", ...part.between)];
    case "diode":
    case "rectifier":
      return part.junctions.map(({ anode, cathode }) => draft("through", anode, cathode));
    case "capacitor":
      return [draft("load", part.positivePin, part.negativePin)];
    case "battery":
      return [draft("source", part.positivePin, part.negativePin)];
    case "generator":
      return part.windings.flatMap(({ pins: [a, b] }) =>
        b === undefined ? [] : [draft("source", a!, b)],
      );
    case "regulator": {
      const { positivePin, negativePin } = part;
      const across =
        positivePin === undefined || negativePin === undefined
          ? []
          : [draft("source", positivePin, negativePin)];
      return [...across, ...loads];
    }
    default:
      return loads;
  }
}

/** Every pair a switch joins in some position, once, with whether it is joined at rest. */
function contactPairs(
  part: Part & { readonly kind: "switch" },
): readonly [string, string, boolean][] {
  const pairs = new Map<string, [string, string, boolean]>();
  for (const { id, joins } of part.positions) {
    for (const [a, b] of joins) {
      const key = [a, b].sort().join(" ");
      const before = pairs.get(key);
      pairs.set(key, [
        before?.[0] ?? a,
        before?.[1] ?? b,
        (before?.[2] ?? false) || id === part.rest,
      ]);
    }
  }
  return [...pairs.values()];
}
