import type { Choice } from "../../entry/SelectField.tsx";
import type { JointKind } from "./wiringChange.ts";

/** Kinds of joint as a hand makes them. */
export const jointKinds: readonly (Choice & { readonly value: JointKind })[] = [
  { value: "crimped-splice", word: "crimped" },
  { value: "multiway-bullet", word: "bullets in one sleeve" },
  { value: "ring-stack", word: "rings on one stud" },
  { value: "bus", word: "bar" },
  { value: "soldered", word: "soldered" },
  { value: "twisted", word: "twisted" },
];
