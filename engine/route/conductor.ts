import type { Figure } from "../messages/index.ts";

/**
 * One stretch of real copper between two pins: a wire of the loom or the fly lead of a part.
 * Everything later rooms need to know of it, with nothing left to look up.
 */
export interface Conductor {
  /** Wire id, or PART.PIN for a fly lead. */
  readonly id: string;
  readonly kind: "wire" | "flyLead";
  readonly from: string;
  /** For a fly lead: PART.PIN~, the inside end, which no wire can reach. */
  readonly to: string;
  readonly circuit: string | null;
  /** Path length along the loom, mm; null when nobody has measured it. */
  readonly lengthMm: number | null;
  /** Row of tables/wires. */
  readonly makeId: string;
  readonly sizedBy: "person" | "engine";
  readonly areaMm2: number;
  readonly strandCount: number;
  readonly strandDiameterMm: number;
  readonly conductorDiameterMm: number;
  readonly odMm: number;
  readonly wall: string;
  readonly insulation: string;
  /** Temperature the insulation is good for, °C. */
  readonly classC: number;
  /** Ω/m at 20 °C: the published maximum, or the computed one where none is published (drop and heat). */
  readonly ohmPerM20Max: number;
  /** Ω/m at 20 °C of the counted copper alone (largest short-circuit current). */
  readonly ohmPerM20Min: number;
  /** Trade rating of a single wire, A, with its basis; null where the make has none. */
  readonly rated: Figure | null;
  /** Hottest surroundings on its way, °C. */
  readonly ambientC: number;
}

/** All conductors by id. */
export type Conductors = ReadonlyMap<string, Conductor>;
