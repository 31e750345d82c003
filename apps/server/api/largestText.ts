/** Longest job text that is taken, in characters; the engine's reader refuses the same size counted in bytes. */
export const LARGEST_TEXT = 20_000_000;
