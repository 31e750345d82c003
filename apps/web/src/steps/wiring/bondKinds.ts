import type { Bond } from "@copperwright/engine";
import type { Choice } from "../../entry/SelectField.tsx";

/** What joins two masses, as it is found on a machine. */
export const bondKinds: readonly (Choice & { readonly value: Bond["kind"] })[] = [
  { value: "strap", word: "earth strap" },
  { value: "bolt", word: "bolted together" },
  { value: "case", word: "case on its bracket" },
  { value: "clamp", word: "clamped" },
  { value: "bearing", word: "through a bearing" },
  { value: "paint", word: "paint between" },
  { value: "rubber", word: "rubber between" },
  { value: "none", word: "nothing conducts" },
];

export const bodyKinds = [
  { value: "frame", word: "frame" },
  { value: "engine", word: "engine" },
  { value: "forks", word: "forks" },
  { value: "bars", word: "handlebars" },
  { value: "tank", word: "tank" },
  { value: "lamp-shell", word: "lamp shell" },
  { value: "other", word: "another mass" },
] as const;
