import { batteryOf, loadsOf, type PartOf } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import { type DeclaredResult, type LoadInState, starterTurns } from "../declaredResults.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { reachOver } from "../reachOver.ts";
import { operateCommand, stateInWords, stateOf } from "../stateArguments.ts";

/** Under this share of the system's volts a load gets nothing; over the rest of it, a pin is at full volts. */
const NOTHING_RATIO = 0.05;

interface Dead {
  readonly result: DeclaredResult;
  readonly load: LoadInState;
}

/** Loads that are dead in a state they are meant to work in, and why: no feed, no return, or too little of either. */
export const deadLoads: Judge = (design) => {
  const dead = new Map<string, Dead[]>();
  for (const result of design.declared) {
    if (!result.converged) continue;
    const turning = starterTurns(design.job, result);
    for (const load of result.loads) {
      const named = result.on.includes(load.load);
      if (load.expected !== true || load.works || (turning && !named)) continue;
      dead.set(load.load, [...(dead.get(load.load) ?? []), { result, load }]);
    }
  }
  const declared = [...dead].map(([ref, list]) => deadFinding(design, ref, list));
  return [...declared, ...neverWorks(design, new Set(dead.keys()))];
};

const CODES = {
  feed: "load-without-feed",
  return: "load-without-return",
  weak: "load-too-weak",
} as const;

function deadFinding(design: Design, ref: string, list: readonly Dead[]): Finding {
  const { result, load } = list[0]!;
  const cause = causeOf(design, ref, result, load);
  return findingOf({
    code: CODES[cause],
    severity: "mend",
    subject: { kind: "load", id: ref },
    state: stateOf(design.job, result.state),
    numbers: {
      stateName: result.name,
      positions: stateInWords(design.job, result.state),
      loadV: Math.abs(load.v),
      sharePercent: 100 * load.shareRatio,
      stateCount: list.length,
      moreCount: list.length > 1 ? list.length - 1 : null,
    },
    reproduce: operateCommand(design.job, result.state),
  });
}

function causeOf(
  { job, compiled }: Design,
  ref: string,
  result: DeclaredResult,
  load: LoadInState,
): keyof typeof CODES {
  const systemV = job.supply.nominalV;
  if (Math.abs(load.v) > NOTHING_RATIO * systemV) return "weak";
  const pin = loadsOf(job).find((one) => one.ref === ref)!.pins[0];
  const node = compiled.jobNetwork.nodes.indexOf.get(pin)!;
  const live = compiled.jobNetwork.nodes.indexOf.get(batteryOf(job)?.livePost ?? "");
  const liveV = live === undefined ? systemV : Math.abs(result.nodeV[live]!);
  const pinV = Math.abs(result.nodeV[node]!);
  return pinV > liveV / 2 ? "return" : "feed";
}

/** Loads nobody declared anything of, that worked in no state at all. */
function neverWorks(design: Design, known: ReadonlySet<string>): readonly Finding[] {
  const { job, worst } = design;
  if (batteryOf(job) === null) return [];
  const boxed = workedByBoxes(design);
  return [...worst.loads.values()]
    .filter(({ load, litCount }) => litCount === 0 && !load.ac && !known.has(load.ref))
    .filter(({ load, reversedV }) => !isInside(load.part, load.pins) && !isReversed(reversedV, job))
    .filter(({ load }) => load.part.kind !== "regulator" && !boxed.has(load.ref))
    .map(({ load, mostW, mostState }) =>
      findingOf({
        code: "load-never-works",
        severity: "mend",
        subject: { kind: "load", id: load.ref },
        numbers: { mostW, stateCount: worst.stateCount },
        state: mostState && stateOf(job, mostState),
      }),
    );
}

/** Loads with a pin on a box's or a generator's terminal: what is inside works them, and it is not in the network. */
function workedByBoxes(design: Design): ReadonlySet<string> {
  const outputs = design.job.parts.flatMap((part) => {
    if (part.kind !== "module" && part.kind !== "generator") return [];
    const fed = new Set(part.kind === "module" ? describedPins(part) : []);
    return part.pins.filter(({ id }) => !fed.has(id)).map(({ id }) => `${part.id}.${id}`);
  });
  const reached = reachOver(design, outputs, (kind) => kind === "wire" || kind === "joint");
  return new Set(
    loadsOf(design.job)
      .filter(({ pins }) => pins.some((pin) => reached.has(pin)))
      .map(({ ref }) => ref),
  );
}

const describedPins = ({ elements, driver }: PartOf<"module">): readonly string[] =>
  [...elements.map(({ pins }) => pins), ...(driver?.outputs ?? [])].flat();

/** Pins no wire reaches belong to the part's own inside. */
const isInside = (
  part: {
    readonly id: string;
    readonly pins: readonly { readonly id: string; readonly role?: string | undefined }[];
  },
  pins: readonly string[],
): boolean =>
  pins.some((ref) => part.pins.find(({ id }) => ref === `${part.id}.${id}`)?.role === "internal");

const isReversed = (reversedV: number, { supply }: Design["job"]): boolean =>
  reversedV > supply.nominalV / 2;
