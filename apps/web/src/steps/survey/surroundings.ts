/** What a loom passes through, in the words of the trade. */
export const SURROUNDINGS = [
  { value: "open", word: "open frame" },
  { value: "under-tank", word: "under the tank" },
  { value: "battery-box", word: "battery box" },
  { value: "headlamp-shell", word: "headlamp shell" },
  { value: "near-engine", word: "near the engine" },
  { value: "near-exhaust", word: "near the exhaust" },
  { value: "exposed", word: "open to the weather" },
] as const;
