import { type Load, pinRef, presentParts } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import { figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { reachOver } from "../reachOver.ts";
import { operateCommand, stateOf } from "../stateArguments.ts";

/** Parts that cannot live with this earth, one-way parts the wrong way round, and a charge lamp too weak to excite. */
export const partPolarity: Judge = (design) => [
  ...wrongEarth(design),
  ...reversedLoads(design),
  ...reversedRectifiers(design),
  ...weakChargeLamp(design),
];

function wrongEarth({ job }: Design): readonly Finding[] {
  const here = `${job.supply.earthPolarity}-earth`;
  return presentParts(job)
    .filter(({ polarity }) => polarity === "negative-earth" || polarity === "positive-earth")
    .filter(({ polarity }) => polarity !== here)
    .map(({ id, polarity }) =>
      findingOf({
        code: "part-on-wrong-earth",
        severity: "stop",
        subject: { kind: "part", id },
        numbers: { madeFor: polarity!.replace("-", " "), machine: here.replace("-", " ") },
      }),
    );
}

function reversedLoads({ job, worst }: Design): readonly Finding[] {
  return [...worst.loads.values()]
    .filter(({ load, litCount, reversedV }) => {
      return load.oneWay && litCount === 0 && reversedV > job.supply.nominalV / 2;
    })
    .map(({ load, reversedV }) =>
      findingOf({
        code: "one-way-reversed",
        severity: "mend",
        subject: { kind: "load", id: load.ref },
        numbers: { reversedV, first: load.pins[0], second: load.pins[1] },
      }),
    );
}

/** Less than this through a lamp in every state is a leak, A: what it hangs on is not in the network. */
const NOTHING_A = 0.001;

/** With the engine stopped a charging rectifier passes nothing. */
const LEAKING_A = 0.1;

function reversedRectifiers({ job, compiled, declared }: Design): readonly Finding[] {
  const { elements } = compiled.jobNetwork;
  const rectifiers = presentParts(job).filter((part) => part.kind === "rectifier");
  return rectifiers.flatMap(({ id }): readonly Finding[] => {
    const places = elements.flatMap(({ kind, of }, k) =>
      kind === "diode" && of.startsWith(`${id}:`) ? [k] : [],
    );
    const states = [{ state: {} }, ...declared].map(({ state }) => ({
      ...state,
      engine: { mode: "stopped" as const },
    }));
    for (const state of states) {
      const { elementA } = compiled.solve(state);
      const mostA = Math.max(...places.map((k) => Math.abs(elementA[k]!)), 0);
      if (mostA < LEAKING_A) continue;
      return [
        findingOf({
          code: "rectifier-reversed",
          severity: "stop",
          subject: { kind: "part", id },
          state: stateOf(job, state),
          numbers: { currentA: mostA },
          reproduce: operateCommand(job, state),
        }),
      ];
    }
    return [];
  });
}

/** An alternator with an excited rotor takes its first field current through the charge lamp. */
function weakChargeLamp(design: Design): readonly Finding[] {
  const { job, worst } = design;
  const least = figure("elementRules", "field-start", "value");
  return presentParts(job).flatMap((part): readonly Finding[] => {
    if (part.kind !== "generator" || part.type !== "alternator-excited") return [];
    const pins = part.windings
      .filter(({ use }) => use === "field")
      .flatMap((winding) => winding.pins.map((pin) => pinRef(part.id, pin)));
    const reached = reachOver(design, pins, (kind) => kind === "wire" || kind === "joint");
    const feeding = [...worst.loads.values()].filter(
      ({ load }) => load.part.kind !== "regulator" && load.pins.some((pin) => reached.has(pin)),
    );
    const lamps = feeding.filter(({ load }) => load.part.kind === "lamp");
    const first = lamps[0];
    const startA = feeding
      .filter(({ load }) => !load.pins.every((pin) => reached.has(pin) || isInside(part.id, pin)))
      .reduce((sum, one) => sum + (one.mostA > NOTHING_A ? one.mostA : ratedA(one.load)), 0);
    if (first === undefined || startA >= least.value) return [];
    return [
      findingOf({
        code: "charge-lamp-may-not-excite",
        severity: "mend",
        subject: { kind: "load", id: first.load.ref },
        also: [part.id],
        limit: least,
        numbers: { startA },
      }),
    ];
  });
}

/** Where the rotor is not in the network, what the lamp was made to pass. */
const ratedA = ({ ratedW, ratedV }: Load): number => (ratedW ?? 0) / (ratedV ?? 1);

const isInside = (part: string, pin: string): boolean => pin.startsWith(`${part}.`);
