import type { EndFitting, FittingBasis, FittingProblem } from "../size/index.ts";
import { printNumber } from "../units/index.ts";

const KINDS: Readonly<Record<EndFitting["kind"], string>> = {
  blade: "blade",
  bullet: "bullet",
  ring: "ring",
  sealed: "sealed contact",
  splice: "splice barrel",
  soldered: "soldered, no terminal",
};

const range = ({ wireFromMm2, wireToMm2 }: EndFitting): string =>
  wireFromMm2 === null || wireToMm2 === null
    ? ""
    : wireFromMm2 === wireToMm2
      ? `barrel ${printNumber(wireToMm2, 0)} mm²`
      : `barrel ${wireFromMm2} to ${wireToMm2} mm²`;

/** "blade receptacle", "ring". */
export function kindText({ kind, half }: EndFitting): string {
  const which =
    half === null || half === "mate of the fly lead" || kind === "splice" || kind === "soldered"
      ? ""
      : half;
  return [KINDS[kind], which].filter(Boolean).join(" ");
}

/** What to ask for in a shop: kind, size, which half, what the barrel holds. */
export function terminalName(fitting: EndFitting): string {
  const { kind, size } = fitting;
  if (kind === "splice" || kind === "soldered") return KINDS[kind];
  return [kindText(fitting), size, range(fitting)].filter(Boolean).join(", ");
}

const BASES: Readonly<Record<FittingBasis, string>> = {
  person: "as the job says",
  stud: "chosen by the stud",
  "fly-lead": "chosen to mate the part's own lead",
  connector: "chosen by the plug",
  joint: "chosen by the joint",
  "soldered-joint": "joint is soldered",
  area: "by wire size: look at the part",
};

export const basisText = ({ basis }: EndFitting): string => BASES[basis];

const PROBLEMS: Readonly<Record<FittingProblem, string>> = {
  "below-range": "copper too thin for the barrel",
  "above-range": "copper too thick for any barrel of the kind",
  "between-ranges": "barrel one size large: pull a sample first",
  insulation: "no seal closes on this wire",
  "stud-not-stated": "measure the stud",
};

export const problemText = ({ problem }: EndFitting): string =>
  problem === null ? "" : PROBLEMS[problem];
