/** A verdict or severity as it is said. */
export const verdictWord = (word: string): string => (word === "not-proven" ? "not proven" : word);

/** From the gravest to the least. */
export const GRAVEST_FIRST = ["stop", "not-proven", "mend", "advise"] as const;
