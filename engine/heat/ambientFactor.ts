/**
 * What a rating stated for one ambient temperature becomes at another, by the rule of the published tables.
 *
 *   factor = √( (limit − ambient) / (limit − stated) )
 *
 * It takes heat as proportional to the rise. The full balance in still air is a little steeper, so use it only to carry
 * a published rating over, never in place of the model.
 *
 * @param at.limitC         conductor limit, °C.
 * @param at.ambientC       ambient asked about, °C.
 * @param at.ratedAmbientC  ambient the rating was stated for, °C, below the limit.
 * @returns 0 where the ambient is at or above the limit: nothing may be carried there.
 * @source IEC 60364-5-52 table B.52.14 follows this rule.
 */
export function ambientFactor(at: {
  readonly limitC: number;
  readonly ambientC: number;
  readonly ratedAmbientC: number;
}): number {
  if (!(at.ratedAmbientC < at.limitC)) {
    throw new Error(
      `rating stated at ${at.ratedAmbientC} °C, at or over its limit ${at.limitC} °C`,
    );
  }
  if (at.ambientC >= at.limitC) return 0;
  return Math.sqrt((at.limitC - at.ambientC) / (at.limitC - at.ratedAmbientC));
}
