import { type Job, type Load, loadsOf, presentParts } from "../job/index.ts";
import { figure } from "../tables/index.ts";
import type { ElementReadings } from "./acReadings.ts";
import type { JobNetwork } from "./buildJobNetwork.ts";
import { expectedOf } from "./expectedOf.ts";
import { lampAnchor } from "./lampLaw.ts";
import type { LampRow, LoadRow, OperateState } from "./operateResult.ts";

interface Loaded {
  readonly load: Load;
  readonly v: number;
  readonly currentA: number;
  readonly powerW: number;
  readonly ac: { readonly kind?: "ac"; readonly why?: string };
}

/** Every lamp filament or light source by part and pins. */
export function lampRows(
  job: Job,
  jobNetwork: JobNetwork,
  readings: ElementReadings,
  state: OperateState,
): readonly LampRow[] {
  return loaded(job, jobNetwork, readings)
    .filter(({ load }) => load.kind === "filament")
    .map(({ load, v, currentA, powerW, ac }) => {
      const { part } = load;
      if (part.kind !== "lamp") throw new Error(`${load.ref} is no lamp`);
      const filament = part.filaments[load.index]!;
      const anchor = lampAnchor(filament);
      const anchorA = anchor.powerW / anchor.v;
      const ratio = part.source === "led" ? currentA / anchorA : Math.abs(v) / anchor.v;
      return {
        part: part.id,
        filament: `${filament.pins[0]}-${filament.pins[1]}`,
        v,
        currentA,
        powerW,
        ratedW: filament.ratedW,
        ...relativeLight(part.source, ratio),
        anchor: anchor.from,
        lit: powerW >= share("lit-share") * filament.ratedW,
        expected: expectedOf(job, load.ref, state),
        ...ac,
      };
    })
    .sort((a, b) => (a.part + a.filament < b.part + b.filament ? -1 : 1));
}

/** Filament: by the published powers of the volts. LED: by the current, which both published laws leave alone. */
function relativeLight(source: "filament" | "led", ratio: number) {
  if (source === "led") {
    const light = Math.max(0, ratio);
    return { relativeLight: light, relativeLightLow: light };
  }
  const one = ratio ** figure("lampLaws", "light-exponent", "value").value;
  const other = ratio ** figure("lampLaws", "light-exponent-high", "value").value;
  return { relativeLight: one, relativeLightLow: Math.min(one, other) };
}

/** Every other load. Its rated power is nominal volts squared over its resistance. */
export function otherLoadRows(
  job: Job,
  jobNetwork: JobNetwork,
  readings: ElementReadings,
  state: OperateState,
): readonly LoadRow[] {
  const { nominalV } = job.supply;
  return loaded(job, jobNetwork, readings)
    .filter(({ load }) => load.kind !== "filament")
    .map(({ load, v, currentA, powerW, ac }) => {
      const ratedW = load.ratedW ?? nominalV ** 2 / load.resistanceOhm!;
      return {
        part: load.part.id,
        element: load.ref.slice(load.part.id.length + 1),
        v,
        currentA,
        powerW,
        ratedW,
        works: powerW >= share("lit-share") * ratedW,
        expected: expectedOf(job, load.ref, state),
        ...ac,
      };
    })
    .sort((a, b) => (a.part + a.element < b.part + b.element ? -1 : 1));
}

function loaded(job: Job, { elements }: JobNetwork, readings: ElementReadings): readonly Loaded[] {
  const present = new Set(presentParts(job).map((part) => part.id));
  const indexOf = new Map(
    elements.flatMap(({ of, kind }, k) => (kind === "contact" ? [] : [[of, k] as const])),
  );
  return loadsOf(job)
    .filter((load) => present.has(load.part.id))
    .map((load) => {
      const k = indexOf.get(load.ref);
      if (k === undefined) throw new Error(`${load.ref} is not in the network`);
      const v = readings.v[k]!;
      const currentA = readings.currentA[k]!;
      const why = readings.ac.get(k);
      const isAc = why !== undefined;
      const ac = { ...(isAc && { kind: "ac" as const }), ...(isAc && why !== null && { why }) };
      return { load, v, currentA, powerW: v * currentA, ac };
    });
}

const share = (row: string): number => figure("lampLaws", row, "value").value;
