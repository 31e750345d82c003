import type { Job } from "../job/index.ts";
import { type CurveLaw, lawCurrentA } from "../network/index.ts";
import type { CompiledJob } from "../operate/index.ts";

/** Curves of the zeners that lie across the supply. */
export function zenerLaws({ job, jobNetwork }: CompiledJob): readonly CurveLaw[] {
  const zeners = zenerIds(job);
  return jobNetwork.elements.flatMap(({ of, law }) =>
    zeners.has(of) && law.kind === "curve" ? [law] : [],
  );
}

/** Watts the zeners burn with v volts at the posts; the millivolts of their leads are left out. */
export const zenerHeatW = (laws: readonly CurveLaw[], v: number): number =>
  laws.reduce((sumW, law) => sumW + v * lawCurrentA(law, v), 0);

const zenerIds = (job: Job): ReadonlySet<string> =>
  new Set(
    job.parts.flatMap((part) =>
      part.kind === "regulator" && part.type === "zener" ? [part.id] : [],
    ),
  );
