import type { Job } from "@copperwright/engine";

export interface PinChoice {
  readonly pin: string;
  readonly word: string;
}

/** Every place a wire may end on, in the order of the document; a new place last of each owner that can have one. */
export function pinChoices(job: Job): readonly PinChoice[] {
  return [
    ...job.parts.flatMap(({ id, name, pins, status }) =>
      status === "remove"
        ? []
        : pins
            .filter(({ role }) => role !== "internal")
            .map((pin) => ({
              pin: `${id}.${pin.id}`,
              word: `${name || id}, ${pin.name ?? pin.id}`,
            })),
    ),
    ...job.joints.flatMap(({ id, name, ways }) => [
      ...ways.map((way) => ({ pin: `${id}.${way}`, word: `joint ${name ?? id}, way ${way}` })),
      { pin: `${id}.*`, word: `joint ${name ?? id}, a free way` },
    ]),
    ...job.connectors.flatMap(({ id, name, cavities }) =>
      cavities.flatMap((cavity) => [
        { pin: `${id}.${cavity}p`, word: `${name || id}, cavity ${cavity}, plug` },
        { pin: `${id}.${cavity}s`, word: `${name || id}, cavity ${cavity}, socket` },
      ]),
    ),
    ...job.bodies.flatMap(({ id, name, points }) => [
      ...points.map((point) => ({
        pin: `${id}.${point.id}`,
        word: `${name}, ${point.name ?? point.id}`,
      })),
      { pin: `${id}.*`, word: `${name}, a new place` },
    ]),
  ];
}
