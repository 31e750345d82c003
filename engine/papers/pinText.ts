import { type Job, type PinPlace, pinsOf } from "../job/index.ts";

/** A connection point in words: what it is, where it is, which pin. */
export interface PinText {
  /** "REAR TAIL", "X3 cavity 4, socket half", "frame, point BAT". */
  readonly what: string;
  /** "rear lamp (tail and stop), rear mudguard". */
  readonly where: string;
  /** "REAR TAIL", "X3.4 socket": what fits beside a wire number. */
  readonly short: string;
  /** The station alone: "rear mudguard". */
  readonly place: string;
}

/** Reads pins of one job into words. */
export function pinReader(job: Job): (ref: string) => PinText {
  const pins = pinsOf(job);
  const stations = new Map(job.stations.map((station) => [station.id, station.name]));
  return (ref) => {
    const place = pins.get(ref);
    if (place === undefined) return { what: ref, where: "", short: ref, place: "" };
    const station = place.station === null ? "" : (stations.get(place.station) ?? place.station);
    return {
      what: whatOf(place),
      where: [nameOf(place), station].filter(Boolean).join(", "),
      short: shortOf(place),
      place: station,
    };
  };
}

function whatOf(place: PinPlace): string {
  switch (place.ownerKind) {
    case "part":
      return `${place.owner} ${place.pinId}`;
    case "joint":
      return `${place.owner} way ${place.pinId}`;
    case "connector":
      return `${place.owner} cavity ${place.cavity}, ${place.half} half`;
    case "body":
      return `${place.owner} ${place.pinId}`;
  }
}

function shortOf(place: PinPlace): string {
  if (place.ownerKind === "connector") return `${place.owner}.${place.cavity} ${place.half}`;
  return `${place.owner} ${place.pinId}`;
}

function nameOf(place: PinPlace): string {
  switch (place.ownerKind) {
    case "part":
      return place.part.name;
    case "joint":
      return place.joint.name ?? place.joint.kind.replace("-", " ");
    case "connector":
      return place.connector.name;
    case "body":
      return place.body.name;
  }
}
