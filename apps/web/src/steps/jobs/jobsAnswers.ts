import type { CheckResult } from "@copperwright/engine";
import { machineScene } from "@copperwright/engine/scenes";
import { type Picture, pictureOf } from "../../drawing/picture.ts";
import type { Held } from "../../engine/held.ts";

/** What a card on the wall shows of a job; worked out on this device, never taken from the server. */
export interface JobCardView {
  readonly verdict: CheckResult["verdict"];
  readonly counts: CheckResult["counts"];
  readonly wires: number;
  readonly nominalV: number;
  readonly earthPolarity: string;
  /** Colours of its first wires, for a job that has no place on a machine. */
  readonly colours: readonly { readonly main: string; readonly tracer?: string | undefined }[];
  /** The machine with its loom; null where nothing has a place yet. */
  readonly picture: Picture | null;
}

const SWATCH_COUNT = 8;

export const jobsAnswers = {
  jobsCard(held: Held): JobCardView {
    const { verdict, counts } = held.checked().result;
    const drawn = machineScene(held.scenes(), { widthMm: 150, heightMm: 70 });
    return {
      verdict,
      counts,
      wires: held.job.wires.length,
      nominalV: held.job.supply.nominalV,
      earthPolarity: held.job.supply.earthPolarity,
      colours: held.job.wires.flatMap(({ colour }) => colour ?? []).slice(0, SWATCH_COUNT),
      picture: drawn === null ? null : pictureOf(drawn),
    };
  },
};
