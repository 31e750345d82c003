import type { Colour } from "../../job/index.ts";
import type { BundleAnswer, Stretch } from "../../route/index.ts";
import { printNumber } from "../../units/index.ts";
import { type BundleReader, sectionWires } from "../board/bundles.ts";
import { colourCode } from "../colourText.ts";
import type { PaperInput } from "../paperInput.ts";
import { compareNumbers, numberOf } from "../wireRows.ts";

/** One bundle in section with where it is found. */
export interface Section {
  /** "S3". */
  readonly name: string;
  readonly places: string;
  /** In the order of the packed circles. */
  readonly wires: readonly SectionWire[];
  readonly bundle: BundleAnswer;
}

export interface SectionWire {
  readonly id: string;
  readonly number: string;
  readonly code: string;
  readonly colour: Colour | null;
}

/** Bundles of two wires and more, those with the same wires once, thickest first. */
export function sectionsOf(input: PaperInput, bundleOf: BundleReader): readonly Section[] {
  const { job, design } = input;
  const byWires = new Map<string, Stretch[]>();
  for (const stretch of design.routed.stretches) {
    if (stretch.wires.length < 2) continue;
    const key = stretch.wires.join(" ");
    byWires.set(key, [...(byWires.get(key) ?? []), stretch]);
  }
  const wireOf = new Map(job.wires.map((wire) => [wire.id, wire]));
  const sections = [...byWires.values()].map((stretches) => {
    const ids = sectionWires(input, stretches[0]!.wires);
    const wires = ids.map((id): SectionWire => {
      const wire = wireOf.get(id)!;
      const code = colourCode(wire.colour, job.colours.letters);
      return { id, number: numberOf(wire), code, colour: wire.colour ?? null };
    });
    return { places: placesOf(input, stretches), wires, bundle: bundleOf(ids) };
  });
  return sections
    .sort((p, q) => q.bundle.tightestMm - p.bundle.tightestMm || compareNumbers(p.places, q.places))
    .map((section, i) => ({ name: `S${i + 1}`, ...section }));
}

/** "main loom: headlamp shell to headstock, 220 mm". */
function placesOf({ job }: PaperInput, stretches: readonly Stretch[]): string {
  const nameOf = (id: string): string => job.stations.find((one) => one.id === id)?.name ?? id;
  return stretches
    .map(({ loom, run, enterMm, leaveMm, lengthMm }) => {
      const { from, to, lengthMm: whole } = job.runs.find(({ id }) => id === run)!;
      const loomName = job.looms.find(({ id }) => id === loom)?.name;
      const isWhole = enterMm === 0 && leaveMm === (whole?.value ?? null);
      const part = isWhole ? "" : `, from ${printNumber(enterMm, 0)} mm on`;
      const length = lengthMm === null ? "not measured" : `${printNumber(lengthMm, 0)} mm`;
      const way = `${nameOf(from)} to ${nameOf(to)}${part}, ${length}`;
      return loomName === undefined ? way : `${loomName}: ${way}`;
    })
    .join("; ");
}
