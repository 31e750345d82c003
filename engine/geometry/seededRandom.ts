/**
 * A repeatable stream of numbers in [0, 1): the same seed gives the same stream on every machine.
 *
 * @param seed  any integer; taken modulo 2^32.
 * @source 32-bit mixing counter (golden-ratio increment, two multiply-xorshift rounds), a public-domain construction.
 */
export function seededRandom(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x9e3779b9) >>> 0;
    let mixed = state ^ (state >>> 16);
    mixed = Math.imul(mixed, 0x21f0aaad);
    mixed ^= mixed >>> 15;
    mixed = Math.imul(mixed, 0x735a2d97);
    mixed ^= mixed >>> 15;
    return (mixed >>> 0) / 2 ** 32;
  };
}
