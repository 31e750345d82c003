import { type BundleAnswer, bundleOf } from "../../route/index.ts";
import type { PaperInput } from "../paperInput.ts";

/** The section of any bundle of the job's wires, each mixture packed once. */
export type BundleReader = (wires: readonly string[]) => BundleAnswer;

export function bundleReader(
  { design }: Pick<PaperInput, "design">,
  packed: PackedBundles = new Map(),
  packedBefore?: ReadonlyMap<string, BundleAnswer>,
): BundleReader {
  return (wires) => {
    const odsMm = sectionWires({ design }, wires).map((id) => odOf({ design }, id));
    const key = odsMm.join(" ");
    const known = packed.get(key) ?? packedBefore?.get(key) ?? bundleOf(odsMm);
    packed.set(key, known);
    return known;
  };
}

/** Bundles packed so far, by the diameters in them: a mixture packs alike whatever its wires are called. */
export type PackedBundles = Map<string, BundleAnswer>;

/** The wires of a bundle in the order its section lists them: thickest first, then by id. */
export const sectionWires = (
  input: Pick<PaperInput, "design">,
  wires: readonly string[],
): readonly string[] =>
  [...wires].sort((p, q) => odOf(input, q) - odOf(input, p) || (p < q ? -1 : 1));

function odOf({ design }: Pick<PaperInput, "design">, id: string): number {
  const conductor = design.conductors.get(id);
  if (conductor === undefined) throw new Error(`wire ${id} has no make`);
  return conductor.odMm;
}
