import type { Choice } from "../../entry/SelectField.tsx";
import type { Covering } from "./wiringChange.ts";

export const coverings: readonly (Choice & { readonly value: Covering })[] = [
  { value: "pvc-sleeve", word: "PVC sleeve" },
  { value: "woven-sleeve", word: "woven sleeve" },
  { value: "tape", word: "tape" },
  { value: "heat-shrink", word: "heat shrink" },
  { value: "open", word: "open" },
];
