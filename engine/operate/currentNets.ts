import { batteryOf } from "../job/index.ts";
import type { JobNetwork } from "./buildJobNetwork.ts";
import type { ElementDraft } from "./jobElement.ts";
import { carries, neighbourhood, reachFrom, wayTo } from "./loomReach.ts";
import { type Generator, type Winding, windingEnds } from "./supplySources.ts";

/** An alternating net: everything a winding's live end reaches over the loom, whatever the switches do, short of earth. */
export interface AcNet {
  /** "ac1" ... in order of the first lead. */
  readonly net: string;
  readonly generator: string;
  readonly use: Winding["use"];
  /** Names of nodes: where the windings' live ends come out, and all they reach. */
  readonly leads: readonly string[];
  readonly nodes: ReadonlySet<string>;
  /** Nodes one after the other to the battery's live post; null: they never meet. */
  readonly meetsDcThrough: readonly string[] | null;
}

export interface CurrentNets {
  readonly nets: readonly AcNet[];
  /** Nodes joined to the bodies by copper alone. */
  readonly earthed: ReadonlySet<string>;
}

/** Bonds as well as what carries, for everything that is earth. */
const isEarthing = (element: ElementDraft): boolean =>
  element.kind === "wire" || element.kind === "joint" || element.kind === "bond";
const carriesOrSwitches = (element: ElementDraft): boolean =>
  carries(element) || element.kind === "contact" || element.kind === "short";

type Extra = readonly { readonly from: string; readonly to: string }[];

/**
 * Which pins alternate. Windings of one use of one generator whose nets touch are one net. A pin both a winding and the
 * battery's live post can reach, in any position of the switches, is where two kinds of current meet.
 *
 * @param shorts  extra ways, as pairs of node names.
 */
export function currentNets(jobNetwork: JobNetwork, shorts: Extra = []): CurrentNets {
  const { context, elements, earth } = jobNetwork;
  const hubs = context.job.bodies.map((body) => `${body.id}.hub`);
  const posts = batteryOf(context.job);
  const earths = [earth, posts?.earthedPost ?? null, ...hubs].filter((node) => node !== null);
  const earthed = new Set(reachFrom(earths, neighbourhood(elements, isEarthing)).keys());
  const near = neighbourhood(
    [...elements, ...shorts.map((ends) => shortDraft(ends))],
    carriesOrSwitches,
  );
  const groups = context.parts
    .flatMap((part) => (part.kind === "generator" ? windingGroups(part) : []))
    .map(({ generator, use, windings }) => {
      const leads = windings
        .flatMap((winding) => liveEnds(jobNetwork, generator, winding))
        .filter((node) => !earthed.has(node));
      return { generator: generator.id, use, leads: leads.sort() };
    })
    .filter(({ leads }) => leads.length > 0)
    .sort((a, b) => (a.leads[0]! < b.leads[0]! ? -1 : 1));
  const nets = groups.map(({ generator, use, leads }, k): AcNet => {
    const reached = reachFrom(leads, near, earthed);
    const meets = posts !== null && reached.has(posts.livePost);
    return {
      net: `ac${k + 1}`,
      generator,
      use,
      leads,
      nodes: new Set(reached.keys()),
      meetsDcThrough: meets ? wayTo(reached, posts.livePost) : null,
    };
  });
  return { nets, earthed };
}

function shortDraft({ from, to }: Extra[number]): ElementDraft {
  return { kind: "short", of: "", from, to, law: { kind: "ohm", ohm: 1 }, role: { role: "fixed" } };
}

interface WindingGroup {
  readonly generator: Generator;
  readonly use: Winding["use"];
  readonly windings: readonly Winding[];
}

const ALTERNATING: readonly Winding["use"][] = [
  "phase",
  "lighting",
  "charge",
  "ignition",
  "pickup",
];

/** Phases belong together; every other alternating winding is a source of its own. */
function windingGroups(generator: Generator): readonly WindingGroup[] {
  const alternating = generator.windings.filter(({ use }) => ALTERNATING.includes(use));
  const phases = alternating.filter(({ use }) => use === "phase");
  const others = alternating.filter(({ use }) => use !== "phase");
  return [
    ...(phases.length > 0 ? [{ generator, use: "phase" as const, windings: phases }] : []),
    ...others.map((winding) => ({ generator, use: winding.use, windings: [winding] })),
  ];
}

function liveEnds(
  { context }: JobNetwork,
  generator: Generator,
  winding: Winding,
): readonly string[] {
  const ends = windingEnds(context, generator, winding);
  if (ends === null) return winding.pins.map((pin) => context.inside(generator, pin));
  return winding.pins.length === 2 ? ends : [ends[0]];
}
