import { presentParts, presentWires } from "../asFound.ts";
import type { Job } from "../job.ts";
import type { Unknown } from "./unknown.ts";
import { unknownsOfPart } from "./unknownsOfPart.ts";

/**
 * Everything that is missing or only guessed and would change a result: lengths of runs, sizes of wires that stay, marks on fuses, contact tables, points of
 * generators, the battery, what loads draw, what earths pass, and parts that stand nowhere. Each with how to find out and where the answer goes.
 * What is to be taken off the machine does not matter any more. In the order a survey is done.
 */
export function stillUnknown(job: Job): readonly Unknown[] {
  const all = [
    ...runLengths(job),
    ...wireSizes(job),
    ...presentParts(job).flatMap((part) => unknownsOfPart(job, part)),
    ...jointPlaces(job),
    ...bondOhms(job),
  ];
  return ORDER.flatMap((group) => all.filter((one) => one.group === group));
}

const ORDER: readonly Unknown["group"][] = [
  "runs",
  "wires",
  "fuses",
  "switches",
  "generator",
  "battery",
  "loads",
  "earths",
  "places",
];

function runLengths({ runs, stations }: Job): readonly Unknown[] {
  const nameOf = (id: string): string => stations.find((one) => one.id === id)?.name ?? id;
  return runs
    .filter(({ lengthMm }) => lengthMm === undefined || lengthMm.basis === "estimated")
    .map(({ id, from, to, flex, lengthMm }) => ({
      id: `run ${id}`,
      group: "runs",
      subject: { kind: "run", id },
      what: `${nameOf(from)} to ${nameOf(to)}`,
      howTo: flex
        ? "lay a string along it with the bars at each lock and the suspension at full travel; keep the longest"
        : "lay a string along the way the loom will go, tank and seat fitted",
      guess: lengthMm?.value ?? null,
      answer: { kind: "length", put: { list: "runs", id, path: ["lengthMm"], as: "valued" } },
    }));
}

function wireSizes(job: Job): readonly Unknown[] {
  return presentWires(job)
    .filter(({ status, size }) =>
      size === undefined ? status !== "new" : size.basis === "estimated",
    )
    .map(({ id, number, from, to }) => ({
      id: `size ${id}`,
      group: "wires",
      subject: { kind: "wire", id },
      what: `size of wire ${number ?? id}, ${from} to ${to}`,
      howTo: "count the strands of the bare copper and measure one, never over the insulation",
      guess: null,
      answer: { kind: "wire", put: { list: "wires", id, path: ["size"], as: "make" } },
    }));
}

function jointPlaces({ joints }: Job): readonly Unknown[] {
  return joints
    .filter(({ status, offset }) => status !== "remove" && offset?.mm.basis === "estimated")
    .map(({ id, name, offset }) => ({
      id: `joint ${id}`,
      group: "places",
      subject: { kind: "joint", id },
      what: `where joint ${name ?? id} sits along ${offset!.run}`,
      howTo: "measure along the loom from the run's first station",
      guess: offset!.mm.value,
      answer: {
        kind: "length",
        put: { list: "joints", id, path: ["offset", "mm"], as: "valued" },
      },
    }));
}

function bondOhms({ bonds }: Job): readonly Unknown[] {
  return bonds
    .filter(({ agedOhm }) => agedOhm?.basis === "estimated")
    .map(({ id, from, to, note, agedOhm }) => ({
      id: `bond ${id}`,
      group: "earths",
      subject: { kind: "bond", id },
      what: `${from} to ${to}${note === undefined ? "" : `, ${note}`}`,
      howTo: "pass a known current across it, measure the volts: ohms are volts over amps",
      guess: agedOhm!.value,
      answer: {
        kind: "number",
        unit: "ohm",
        put: { list: "bonds", id, path: ["agedOhm"], as: "valued" },
      },
    }));
}
