import type { Part } from "../../job/index.ts";
import type { Link } from "../circuit/machineGraph.ts";

/** Everything drawn of each part, by its id. */
export type PartFunctions = ReadonlyMap<string, readonly Link[]>;

/** The other functions of a part: of a coil its contacts, of a contact the coil, of a switch's contact the others. */
export function crossLinks(functions: PartFunctions, link: Link): readonly Link[] {
  const others = (functions.get(link.of) ?? []).filter((one) => one.key !== link.key);
  if (link.part?.kind !== "relay") return others;
  return others.filter(({ kind }) => (kind === "coil") !== (link.kind === "coil"));
}

export const partOf = (link: Link): Part => link.part!;

export const bare = (pin: string): string => pin.slice(pin.indexOf(".") + 1);
