/** Which make every wire got, and why. */
export interface SizedWires {
  /** Make of each wire the engine sized, by wire id. */
  readonly makes: ReadonlyMap<string, string>;
  /** What decided: rating, fuse, drop, strength, person. By wire id. */
  readonly governedBy: ReadonlyMap<string, string>;
  readonly passCount: number;
  /** True when another pass would change nothing. */
  readonly settled: boolean;
}
