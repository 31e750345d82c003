/** Files that stand beside the engine's own: tests, what tests share (`*.fixture.ts`), and what a generator wrote. */
export const isBeside = (path: string): boolean => /\.(test|fixture|generated)\.ts$/.test(path);

/** Tests and what they share: no part of what ships. */
export const isForTests = (path: string): boolean => /\.(test|fixture)\.ts$/.test(path);
