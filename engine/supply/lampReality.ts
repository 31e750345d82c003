import { lampAnchor } from "../operate/index.ts";
import { allTables, figure } from "../tables/index.ts";
import { solveStiff } from "./demandCurve.ts";
import { settledVolts } from "./settledVolts.ts";
import type { ModelState, SupplyModel } from "./supplyModel.ts";
import { placedLoads, readingOf } from "./workingLoads.ts";

/** A lamp at the volts it really gets at one speed. */
export interface LampAtSpeed {
  readonly speedRpm: number;
  readonly postsV: number;
  readonly v: number;
  readonly powerW: number;
  /** To its rated light, by the gentle and by the steep published law. */
  readonly lightHighRatio: number;
  readonly lightLowRatio: number;
  /** To its life at rated volts; null: under the volts the law of a halogen lamp holds for, or a light-emitting diode. */
  readonly lifeRatio: number | null;
}

export interface LampReality {
  readonly lamp: string;
  readonly name: string;
  readonly state: string;
  readonly ratedW: number;
  readonly anchorV: number;
  readonly rows: readonly LampAtSpeed[];
}

const CHARGE_RATIO = 0.75;
/** Halogen lamps keep no life law below this share of their volts (the note of tables/lampLaws). */
const HALOGEN_RATIO = 0.9;
const SPEED_RATIOS = [0, 0.25, 0.5, 1] as const;

/** Every filament that works in a lighting state, from a standing engine to the fastest stated speed, battery three quarters full. */
export function lampReality(model: SupplyModel, state: ModelState): readonly LampReality[] {
  const { compiled, battery } = model;
  const fastestRpm = Math.max(0, ...state.sources.map((one) => one.fastestRpm ?? 0));
  const speeds = SPEED_RATIOS.map((ratio) => Math.round(ratio * fastestRpm));
  const solved = [...new Set(speeds)].map((speedRpm) => {
    const postsV = settledVolts(battery, state, speedRpm, CHARGE_RATIO);
    return {
      speedRpm,
      postsV,
      answer: solveStiff(compiled, { positions: state.positions }, postsV),
    };
  });
  const shareRatio = law("lit-share");
  return placedLoads(compiled).flatMap(({ load, place }): LampReality[] => {
    if (load.part.kind !== "lamp" || load.ac || !state.working.includes(load.ref)) return [];
    // A charge lamp is dark once the alternator feeds its own field.
    const last = solved.at(-1)!.answer;
    if (readingOf(compiled, last, place).powerW < shareRatio * (load.ratedW ?? 0)) return [];
    const filament = load.part.filaments[load.index]!;
    const anchor = lampAnchor(filament);
    const isDiode = load.part.source === "led";
    const isHalogen = isHalogenLamp(filament.category);
    const rows = solved.map(({ speedRpm, postsV, answer }) => {
      const { v, powerW } = readingOf(compiled, answer, place);
      const ratio = Math.abs(v) / anchor.v;
      const isLawful = !isDiode && !(isHalogen && ratio < HALOGEN_RATIO);
      return {
        speedRpm,
        postsV,
        v: Math.abs(v),
        powerW,
        lightHighRatio: ratio ** law("light-exponent"),
        lightLowRatio: ratio ** law("light-exponent-high"),
        lifeRatio: isLawful ? ratio ** law("life-exponent") : null,
      };
    });
    const { ref, part, ratedW } = load;
    return [
      { lamp: ref, name: part.name, state: state.id, ratedW: ratedW ?? 0, anchorV: anchor.v, rows },
    ];
  });
}

const law = (id: string): number => figure("lampLaws", id, "value").value;

function isHalogenLamp(category: string | undefined): boolean {
  const lamp = allTables.lamps.rows.find(({ id }) => id === category)?.lamp ?? "";
  return /^(H\d|HS)/.test(lamp);
}
