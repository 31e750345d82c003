import type { CheckResult } from "@copperwright/engine";
import { machineScene } from "@copperwright/engine/scenes";
import { type Picture, type PictureLight, pictureOf } from "../../drawing/picture.ts";
import type { Held } from "../../engine/held.ts";

/** What a card on the wall shows of a job; worked out on this device, never taken from the server. */
export interface JobCardView {
  readonly verdict: CheckResult["verdict"];
  readonly counts: CheckResult["counts"];
  readonly wires: number;
  readonly nominalV: number;
  readonly earthPolarity: string;
  /** The machine with its loom; null where nothing has a place yet. */
  readonly picture: Picture | null;
}

export const jobsAnswers = {
  jobsCard(held: Held, { light }: { readonly light: PictureLight }): JobCardView {
    const checked = held.checked();
    const { verdict, counts } = checked.result;
    const drawn = machineScene(checked);
    return {
      verdict,
      counts,
      wires: held.job.wires.length,
      nominalV: held.job.supply.nominalV,
      earthPolarity: held.job.supply.earthPolarity,
      picture: drawn === null ? null : pictureOf(drawn, light),
    };
  },
};
