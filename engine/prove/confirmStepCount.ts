/**
 * Every so many-th screened short is solved in full to measure the screening: often where few are screened, rarely of more than a million. Primes,
 * so that every resistance has its turn.
 */
const CONFIRM_OFTEN = 97;
export const CONFIRM_EVERY = 499;
const CONFIRM_RARELY = 1499;
const FEW_COUNT = 100_000;
const MANY_COUNT = 1_000_000;

/** The step where so many shorts are screened. */
export function confirmStepCount(shortCount: number): number {
  if (shortCount <= FEW_COUNT) return CONFIRM_OFTEN;
  return shortCount > MANY_COUNT ? CONFIRM_RARELY : CONFIRM_EVERY;
}
