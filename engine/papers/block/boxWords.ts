import { type Job, type Load, loadsOf, type Part } from "../../job/index.ts";
import { printNumber, printQuantity } from "../../units/index.ts";
import { ratingText } from "../partNote.ts";
import type { FeedBox } from "./feedTree.ts";

/** A box in words: what it is, and figures under it. */
export interface BoxWords {
  readonly title: string;
  readonly note: string;
}

/** @param workingA  current of each load at work, A */
export function boxWords(job: Job, box: FeedBox, workingA: ReadonlyMap<string, number>): BoxWords {
  const { kind, parts } = box;
  switch (kind) {
    case "source":
      return {
        title: parts.map((part) => `${part.id} ${ratingText(part)}`.trim()).join("\n"),
        note: parts.map(({ name }) => name).join("; "),
      };
    case "fuse": {
      const [part] = parts;
      const rating = ratingText(part!);
      const name = part!.name.replace(/\s*\d+(\.\d+)? A\b/, "").trim();
      return { title: `${part!.id}  ${rating}`, note: name };
    }
    case "switch":
      return { title: parts.map(({ id }) => id).join(", "), note: namesText(parts) };
    case "coil":
      return { title: `works ${parts.map(({ id }) => id).join(", ")}`, note: namesText(parts) };
    case "load":
      return loadWords(job, box, workingA);
  }
}

const NAMED_COUNT = 4;

const namesText = (parts: readonly Part[]): string => fewNames(parts.map(({ name }) => name));

function fewNames(all: readonly string[]): string {
  const names = [...new Set(all)];
  const more = names.length - NAMED_COUNT;
  return more > 1 ? `${names.slice(0, NAMED_COUNT).join(", ")} and ${more} more` : names.join(", ");
}

function loadWords(
  job: Job,
  { loads, earthedBy }: FeedBox,
  workingA: ReadonlyMap<string, number>,
): BoxWords {
  const found = loadsOf(job).filter(({ ref }) => loads.includes(ref));
  const sumW = found.reduce((sum, load) => sum + ratedW(job, load), 0);
  const ampsA = found.reduce((sum, { ref }) => sum + (workingA.get(ref) ?? 0), 0);
  const switched =
    earthedBy.length === 0
      ? ""
      : `earth side switched by ${earthedBy.map(({ id }) => id).join(", ")}`;
  const figures = [
    sumW >= 0.05 ? `${printNumber(sumW, sumW < 10 ? 1 : 0)} W` : "",
    ampsA >= 0.05 ? printQuantity(ampsA, "A") : "",
    switched,
  ];
  return { title: fewNames(namedLoads(job, found)), note: figures.filter(Boolean).join(", ") };
}

/** Parts by name; where only some of a part's loads are meant, with their pins. */
function namedLoads(job: Job, found: readonly Load[]): readonly string[] {
  const parts = [...new Set(found.map(({ part }) => part))];
  return parts.map((part) => {
    const own = found.filter((load) => load.part === part);
    if (own.length === loadsOf(job).filter((load) => load.part === part).length) return part.name;
    const pins = own.map(({ pins: [pin] }) => pin.slice(pin.indexOf(".") + 1));
    return `${part.name} (${pins.join(", ")})`;
  });
}

/** Watts as rated, or what the resistance takes at the nominal volts. */
const ratedW = ({ supply }: Job, { ratedW: stated, resistanceOhm }: Load): number =>
  stated ?? (resistanceOhm === null ? 0 : supply.nominalV ** 2 / resistanceOhm);
