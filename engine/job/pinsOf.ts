import type { Body, Connector, Job, Joint, Part } from "./job.ts";

/** The four things a pin can belong to. Their ids share one namespace, because a pin is written OWNER.PIN. */
export type PinOwner =
  | { readonly ownerKind: "part"; readonly part: Part }
  | { readonly ownerKind: "joint"; readonly joint: Joint }
  | {
      readonly ownerKind: "connector";
      readonly connector: Connector;
      readonly cavity: string;
      readonly half: "plug" | "socket";
    }
  | { readonly ownerKind: "body"; readonly body: Body };

/** One connection point. `ref` is how every other place writes it. */
export type PinPlace = PinOwner & {
  readonly ref: string;
  readonly owner: string;
  readonly pinId: string;
  readonly station: string | null;
};

/** The pin of a body that stands for the mass itself. */
export const HUB = "hub";

export const pinRef = (owner: string, pinId: string): string => `${owner}.${pinId}`;

/** Both pins of every cavity of a connector: `C1.3p` on the plug half, `C1.3s` on the socket half. */
export function connectorCavityPins(
  connector: Connector,
): readonly { readonly cavity: string; readonly plug: string; readonly socket: string }[] {
  return connector.cavities.map((cavity) => ({
    cavity,
    plug: pinRef(connector.id, `${cavity}p`),
    socket: pinRef(connector.id, `${cavity}s`),
  }));
}

/**
 * Every connection point of the job by its reference, in document order: pins of parts, ways of joints, both halves of
 * every connector cavity, points of bodies and each body's hub. Removed and new things are included alike.
 */
export function pinsOf(job: Job): ReadonlyMap<string, PinPlace> {
  const pins = new Map<string, PinPlace>();
  const add = (owner: string, pinId: string, station: string | undefined, of: PinOwner): void => {
    const ref = pinRef(owner, pinId);
    pins.set(ref, { ...of, ref, owner, pinId, station: station ?? null });
  };
  for (const part of job.parts) {
    for (const pin of part.pins) add(part.id, pin.id, part.station, { ownerKind: "part", part });
  }
  for (const joint of job.joints) {
    for (const way of joint.ways) add(joint.id, way, joint.station, { ownerKind: "joint", joint });
  }
  for (const connector of job.connectors) {
    for (const cavity of connector.cavities) {
      const of = { ownerKind: "connector", connector, cavity } as const;
      add(connector.id, `${cavity}p`, connector.station, { ...of, half: "plug" });
      add(connector.id, `${cavity}s`, connector.station, { ...of, half: "socket" });
    }
  }
  for (const body of job.bodies) {
    add(body.id, HUB, undefined, { ownerKind: "body", body });
    for (const point of body.points) {
      add(body.id, point.id, point.station, { ownerKind: "body", body });
    }
  }
  return pins;
}
