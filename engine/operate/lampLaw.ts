import type { Filament, PartOf } from "../job/index.ts";
import type { DiodeLaw, FilamentLaw } from "../network/index.ts";
import { allTables, figure } from "../tables/index.ts";
import type { LampRow } from "./operateResult.ts";
import { THERMAL_V } from "./physicalConstants.ts";

const rule = (id: string): number => figure("elementRules", id, "value").value;

/** The volts and watts a filament's law and its relative light go through. */
export interface LampAnchor {
  readonly v: number;
  readonly powerW: number;
  readonly from: LampRow["anchor"];
}

/** Test volts and watts where the job states both, else those of the lamp's row of tables/lamps, else nominal. */
export function lampAnchor(filament: Filament): LampAnchor {
  const { testV, testW, category, ratedV, ratedW } = filament;
  if (testV !== undefined && testW !== undefined) {
    return { v: testV, powerW: testW, from: "test point of the job" };
  }
  const row = allTables.lamps.rows.find((lamp) => lamp.id === category);
  if (row !== undefined && row.testV !== null && row.testW !== null) {
    return { v: row.testV, powerW: row.testW, from: "test point of the table" };
  }
  return { v: ratedV, powerW: ratedW, from: "nominal" };
}

/** I = In u (u² + ε²)^((x − 1)/2), u = V / Vn, through the anchor to within ε². */
export function filamentLaw(filament: Filament, exponent: number): FilamentLaw {
  const anchor = lampAnchor(filament);
  const eps = figure("lampLaws", "current-smoothing", "value").value;
  return {
    kind: "filament",
    ratedV: anchor.v,
    ratedA: anchor.powerW / anchor.v,
    exponent,
    eps,
  };
}

/**
 * An LED lamp as one diode with a resistor, through its rated point: at rated current the junctions take their share of the
 * volts and the resistor the rest. V = j + R I, I = Is (exp(j / (n Vt)) − 1); n is that of one junction times their number.
 */
export function ledLaw(filament: Filament): DiodeLaw {
  const anchor = lampAnchor(filament);
  const ratedA = anchor.powerW / anchor.v;
  const junctionV = anchor.v * rule("led-junction-share");
  const junctionCount = Math.max(1, Math.round(junctionV / rule("led-junction-volts")));
  const n = rule("led-ideality") * junctionCount;
  return {
    kind: "diode",
    isA: ratedA / Math.expm1(junctionV / (n * THERMAL_V)),
    n,
    seriesOhm: (anchor.v - junctionV) / ratedA,
    thermalV: THERMAL_V,
  };
}

/** Law of one filament or light source of a lamp. */
export function lampLaw(
  part: PartOf<"lamp">,
  filament: Filament,
  exponent: number,
): FilamentLaw | DiodeLaw {
  return part.source === "led" ? ledLaw(filament) : filamentLaw(filament, exponent);
}

/** The power diode assumed wherever a job names one: I = Is (exp(j / (n Vt)) − 1) behind its resistance. */
export function siliconLaw(extraOhm = 0): DiodeLaw {
  return {
    kind: "diode",
    isA: rule("diode-saturation"),
    n: rule("diode-ideality"),
    seriesOhm: rule("diode-series") + extraOhm,
    thermalV: THERMAL_V,
  };
}
