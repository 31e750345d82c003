import type { Filament, Job, Part } from "../job/index.ts";
import { loadRef } from "../job/index.ts";
import { lampAnchor } from "../operate/index.ts";
import type { Duties } from "./duties.ts";
import type { DutySwitches } from "./dutySwitches.ts";

/**
 * The job with everything that draws part of the time drawing its mean all the time: watts of brake and indicator lamps times
 * their share, ohms of a coil or heater over its share. Currents in shared wire are then their means too; what the mean hides is
 * the square of the drop, which `cases/supply` compares with states solved one by one.
 */
export function averagedJob(job: Job, duty: DutySwitches, duties: Duties): Job {
  return { ...job, parts: job.parts.map((part) => averagedPart(job, part, duty, duties)) };
}

/** Share of the time a load draws. */
export function dutyOf(
  job: Job,
  part: Part,
  pins: readonly [string, string],
  duty: Pick<DutySwitches, "stopRefs" | "flashRefs">,
  duties: Duties,
): number {
  const ref = loadRef(part.id, pins);
  if (duty.stopRefs.has(ref)) return duties.stopRatio;
  if (duty.flashRefs.has(ref)) return duties.flashRatio;
  if ("elements" in part) {
    const element = part.elements?.find((one) => one.pins.join() === pins.join());
    if (element?.dutyRatio !== undefined) return element.dutyRatio.value;
    const sparks = job.supply.ignition === "battery-coil" || job.supply.ignition === "electronic";
    if (part.kind === "coil" && sparks) return duties.coilRatio;
  }
  return 1;
}

function averagedPart(job: Job, part: Part, duty: DutySwitches, duties: Duties): Part {
  if (part.kind === "lamp") {
    const filaments = part.filaments.map((filament) =>
      scaled(filament, dutyOf(job, part, filament.pins, duty, duties)),
    );
    return { ...part, filaments };
  }
  if (!("elements" in part) || part.elements === undefined) return part;
  const elements = part.elements.map((element) => {
    const ratio = dutyOf(job, part, element.pins, duty, duties);
    // A share of nothing is an open circuit, which the schema's largest resistance stands for.
    const ohm = ratio > 0 ? Math.min(element.ohm.value / ratio, MOST_OHM) : MOST_OHM;
    return { ...element, ohm: { ...element.ohm, value: ohm } };
  });
  return { ...part, elements } as Part;
}

const MOST_OHM = 1e7;
/** Watts of a lamp that is never lit: as good as none. */
const LEAST_W = 1e-6;

function scaled(filament: Filament, ratio: number): Filament {
  if (ratio === 1) return filament;
  const { v, powerW } = lampAnchor(filament);
  return {
    ...filament,
    testV: v,
    testW: Math.max(powerW * ratio, LEAST_W),
    ratedW: Math.max(filament.ratedW * ratio, LEAST_W),
  };
}
