import { type BuildCard, buildCards } from "@copperwright/engine/scenes";
import type { Held } from "../../engine/held.ts";

export const buildAnswers = {
  buildCards: (held: Held): readonly BuildCard[] => buildCards(held.scenes()),
};
