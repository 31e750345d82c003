import { colourSchemes, colours } from "../../tables/index.ts";
import type { Colour, Job, Wire } from "../job.ts";
import { metalNets } from "../metalNets.ts";

/** Rows of the old lists that hold for one polarity only: they have an earth colour for each. */
const OF_POLARITY: Readonly<Record<string, Job["supply"]["earthPolarity"]>> = {
  "british-motorcycle-R": "positive",
  "british-motorcycle-B": "negative",
};

const wordOf = new Map(colours.map(({ id, word }) => [id, word]));
const keyOf = ({ main, tracer, secondTracer }: Colour): string =>
  [main, tracer, secondTracer].filter(Boolean).join("/");

/**
 * Colours for wires that have none: one for each net they make. In this order: what already lies on the net (of earth what most earth wires have), what the
 * job's scheme gives for the purpose, else a colour that is free: worn by no wire of the job and of no meaning in the scheme.
 *
 * @param purposes  role of the scheme by wire, as in tables/colourSchemes
 * @returns         by wire; a wire is left out where every colour is taken
 */
export function newColours(
  job: Job,
  wires: readonly string[],
  purposes: ReadonlyMap<string, string>,
): ReadonlyMap<string, Colour> {
  const nets = metalNets(job);
  const isOurs = new Set(wires);
  const netOf = ({ from }: Wire): string => (nets.isEarth(from) ? EARTH : nets.netOf(from));
  const worn = new Map<string, Colour[]>();
  for (const wire of job.wires) {
    if (wire.colour !== undefined)
      worn.set(netOf(wire), [...(worn.get(netOf(wire)) ?? []), wire.colour]);
  }
  const fresh = job.wires.filter(({ id, colour }) => isOurs.has(id) && colour === undefined);
  const taken = new Set(
    job.wires.flatMap(({ colour }) => (colour === undefined ? [] : [keyOf(colour)])),
  );
  const given = new Map<string, Colour>();
  for (const net of new Set(fresh.map(netOf))) {
    const own = fresh.filter((wire) => netOf(wire) === net);
    const purpose = net === EARTH ? "earth" : own.flatMap(({ id }) => purposes.get(id) ?? [])[0];
    const colour =
      mostWorn(worn.get(net) ?? []) ?? schemeColour(job, purpose) ?? freeColour(job, taken);
    if (colour === null) continue;
    taken.add(keyOf(colour));
    for (const { id } of own) given.set(id, colour);
  }
  return given;
}

const EARTH = "earth";

function mostWorn(worn: readonly Colour[]): Colour | null {
  const counts = new Map<string, { readonly colour: Colour; count: number }>();
  for (const colour of worn) {
    const known = counts.get(keyOf(colour)) ?? { colour, count: 0 };
    known.count++;
    counts.set(keyOf(colour), known);
  }
  const [most] = [...counts].sort(([a, p], [b, q]) => q.count - p.count || (a < b ? -1 : 1));
  return most?.[1].colour ?? null;
}

function schemeColour({ colours: plan, supply }: Job, purpose: string | undefined): Colour | null {
  const row = colourSchemes.find(
    ({ id, scheme, role }) =>
      scheme === plan.scheme &&
      role === purpose &&
      (OF_POLARITY[id] ?? supply.earthPolarity) === supply.earthPolarity,
  );
  if (row === undefined || purpose === undefined) return null;
  return named(row.main, row.tracer);
}

function named(main: string, tracer: string | null): Colour {
  const word = (id: string): string => wordOf.get(id as (typeof colours)[number]["id"]) ?? id;
  return { main: word(main), ...(tracer === null ? {} : { tracer: word(tracer) }) };
}

/** Column of tables/colours each letter system stands in. */
const LETTERS = {
  iec: "iec60757",
  british: "au7",
  german: "german",
  japanese: "japanese",
} as const;

/** The first of tables/colours with the first tracer that nobody wears, that the job's letters can name and that means nothing in its scheme. */
function freeColour({ colours: plan }: Job, taken: ReadonlySet<string>): Colour | null {
  const meant = new Set(
    colourSchemes
      .filter(({ scheme }) => scheme === plan.scheme)
      .map(({ main, tracer }) => keyOf(named(main, tracer))),
  );
  // Two wires of one colour are told apart by their tracers; a wire without one is the rarest to be free.
  const lettered = colours.filter((row) => row[LETTERS[plan.letters]] !== null);
  for (const { id: tracer } of lettered) {
    for (const { id: main } of lettered) {
      const colour = main === tracer ? null : named(main, tracer);
      if (colour !== null && !taken.has(keyOf(colour)) && !meant.has(keyOf(colour))) return colour;
    }
  }
  return null;
}
