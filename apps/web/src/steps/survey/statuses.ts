/** What becomes of a thing, in words. */
export const STATUSES = [
  { value: "found", word: "found, not decided" },
  { value: "keep", word: "stays" },
  { value: "remove", word: "comes off" },
  { value: "new", word: "new" },
] as const;
