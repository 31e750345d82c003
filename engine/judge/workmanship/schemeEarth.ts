import type { Job } from "../../job/index.ts";
import { colourSchemes } from "../../tables/index.ts";
import { schemeKey } from "./colourKey.ts";

/** Rows that hold for one polarity only: the old British motorcycle lists have an earth colour for each. */
const OF_POLARITY: Readonly<Record<string, Job["supply"]["earthPolarity"]>> = {
  "british-motorcycle-R": "positive",
  "british-motorcycle-B": "negative",
};

/** The colour earth has in the job's scheme at the job's polarity; null where the scheme has none. */
export function schemeEarth({
  colours,
  supply,
}: Job): { readonly key: string; readonly row: (typeof colourSchemes)[number] } | null {
  const row = colourSchemes.find(
    ({ id, scheme, role }) =>
      scheme === colours.scheme &&
      role === "earth" &&
      (OF_POLARITY[id] ?? supply.earthPolarity) === supply.earthPolarity,
  );
  return row === undefined ? null : { key: schemeKey(row), row };
}
