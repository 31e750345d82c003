import { batteriesOf, type Colour, pinRef, presentParts } from "../../job/index.ts";
import { namesInWords } from "../../messages/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { colourKey } from "./colourKey.ts";
import { schemeEarth } from "./schemeEarth.ts";
import { wireNets } from "./wireNets.ts";

interface Coloured {
  readonly id: string;
  readonly kind: "wire" | "flyLead";
  readonly pin: string;
  readonly colour: Colour;
}

/** The colour that means earth, on a wire that is not. On a wire the battery can reach it kills the next hand that trusts it. */
export const earthColourLive: Judge = (design) => {
  const earth = schemeEarth(design.job);
  if (earth === null) return [];
  const nets = wireNets(design.job);
  const wrong = coloured(design).filter(
    ({ pin, colour, kind }) =>
      colourKey(colour) === earth.key &&
      !nets.isEarth(pin) &&
      (kind === "wire" || design.wiresAt.has(pin)),
  );
  const isLive = ({ id }: Coloured): boolean =>
    (design.protection.guards.get(id) ?? []).some(
      ({ sourceKind, via }) => sourceKind === "battery" && via === null,
    );
  return [wrong.filter(isLive), wrong.filter((one) => !isLive(one))].flatMap((group) => {
    const [first, ...others] = group;
    if (first === undefined) return [];
    return findingOf({
      code: isLive(first) ? "earth-colour-live" : "earth-colour-not-earth",
      severity: isLive(first) ? "mend" : "advise",
      subject: { kind: first.kind, id: first.id },
      also: others.map(({ id }) => id),
      numbers: {
        colour: earth.key,
        scheme: design.job.colours.scheme,
        earth: `${design.job.supply.earthPolarity} earth`,
      },
      limit: null,
    });
  });
};

/** Earth wires that do not have the scheme's earth colour. */
export const earthOtherColour: Judge = (design) => {
  const earth = schemeEarth(design.job);
  if (earth === null) return [];
  const nets = wireNets(design.job);
  const cables = batteryCables(design);
  const other = coloured(design).filter(
    ({ id, pin, colour, kind }) =>
      kind === "wire" && !cables.has(id) && nets.isEarth(pin) && colourKey(colour) !== earth.key,
  );
  const [first, ...others] = other;
  if (first === undefined) return [];
  const keys = [...new Set(other.map(({ colour }) => colourKey(colour)))].sort();
  return [
    findingOf({
      code: "earth-other-colour",
      severity: "advise",
      subject: { kind: "wire", id: first.id },
      also: others.map(({ id }) => id),
      numbers: {
        colours: namesInWords(keys),
        colour: earth.key,
        scheme: design.job.colours.scheme,
        earth: `${design.job.supply.earthPolarity} earth`,
      },
      limit: null,
    }),
  ];
};

/** Battery and starter cables are sold in black and red and keep those. */
function batteryCables({ job }: Design): ReadonlySet<string> {
  const starter = new Set(
    job.circuits.filter(({ dropClass }) => dropClass === "starter").map(({ id }) => id),
  );
  const posts = new Set(batteriesOf(job).map(({ earthedPost }) => earthedPost));
  return new Set(
    job.wires
      .filter(({ circuit, from, to }) => starter.has(circuit) || posts.has(from) || posts.has(to))
      .map(({ id }) => id),
  );
}

/** Every wire and fly lead with a colour, by id. */
function coloured({ job }: Design): readonly Coloured[] {
  const wires = job.wires.flatMap(({ id, from, colour }): Coloured[] =>
    colour === undefined ? [] : [{ id, kind: "wire", pin: from, colour }],
  );
  const tails = presentParts(job).flatMap((part) =>
    part.pins.flatMap(({ id, flyLead }): Coloured[] => {
      if (flyLead === undefined) return [];
      const ref = pinRef(part.id, id);
      return [{ id: ref, kind: "flyLead", pin: ref, colour: flyLead.colour }];
    }),
  );
  return [...wires, ...tails].sort((a, b) => (a.id < b.id ? -1 : 1));
}
