import type { Job, Part, PartOf } from "../job.ts";
import { howToMeasure } from "./howToMeasure.ts";
import { partFigures } from "./partFigures.ts";
import type { Unknown } from "./unknown.ts";

/** What is not known of one part. */
export function unknownsOfPart(job: Job, part: Part): readonly Unknown[] {
  return [
    ...(part.kind === "fuse" ? fuseMarks(part) : []),
    ...(part.kind === "switch" ? contactTable(part) : []),
    ...(part.kind === "generator" ? outputPoints(part) : []),
    ...emptyElements(part),
    ...guessedFigures(part),
    ...noPlace(job, part),
  ];
}

const named = ({ id, name }: Part): string => (name === "" ? id : name);

const about = (part: Part, key: string, group: Unknown["group"]) =>
  ({
    id: `${key} ${part.id}`,
    group,
    subject: { kind: "part", id: part.id },
    guess: null,
  }) as const;

function fuseMarks(part: PartOf<"fuse">): readonly Unknown[] {
  const put = (field: string) =>
    ({ list: "parts", id: part.id, path: [field], as: "plain" }) as const;
  const marking: Unknown = {
    ...about(part, "marking", "fuses"),
    what: `which current the mark on ${named(part)} means`,
    howTo:
      "read the band or the paper inside: the current it carries for ever, or the one it blows at",
    answer: {
      kind: "choice",
      options: [
        { value: "continuous", word: "carries for ever" },
        { value: "blow", word: "blows at" },
      ],
      put: put("marking"),
    },
  };
  const type: Unknown = {
    ...about(part, "fuse-type", "fuses"),
    what: `make-up of ${named(part)}`,
    howTo: "look at its body; a glass one is measured over its caps",
    answer: {
      kind: "choice",
      options: [
        { value: "blade", word: "blade" },
        { value: "mini", word: "mini blade" },
        { value: "maxi", word: "large blade" },
        { value: "glass-6.3x32", word: "glass 6.3 x 32" },
        { value: "glass-5x20", word: "glass 5 x 20" },
        { value: "glass-british", word: "glass, old British" },
        { value: "torpedo", word: "ceramic torpedo" },
      ],
      put: put("type"),
    },
  };
  return [
    ...(part.marking === "unknown" ? [marking] : []),
    ...(part.type === "unknown" ? [type] : []),
  ];
}

/** A switch in which no position joins anything has not been metered. */
function contactTable(part: PartOf<"switch">): readonly Unknown[] {
  if (part.positions.some(({ joins }) => joins.length > 0)) return [];
  return [
    {
      ...about(part, "contacts", "switches"),
      what: `contact table of ${named(part)}`,
      howTo: "meter every pair of terminals in every position, both ways, while wiggling",
      answer: { kind: "contacts", part: part.id },
    },
  ];
}

const GIVES: readonly string[] = ["armature", "output", "phase", "lighting", "charge"];

/** A line of volts and amps goes through two points; windings of one stator share those of the first. */
function outputPoints(part: PartOf<"generator">): readonly Unknown[] {
  const guessed = part.windings.flatMap(({ pins, points }, i) =>
    (points ?? []).flatMap((point, k): Unknown[] =>
      point.basis !== "estimated"
        ? []
        : [
            {
              ...about(part, `point ${i} ${k}`, "generator"),
              what: `${named(part)} ${pins.join(" ")}: amps at ${point.speedRpm} rpm and ${point.atV} V`,
              howTo:
                "ammeter in the main lead, engine held at that speed, load until the volts are there",
              guess: point.currentA,
              answer: {
                kind: "number",
                unit: "A",
                put: {
                  list: "parts",
                  id: part.id,
                  path: ["windings", i, "points", k],
                  as: "point-current",
                  within: point,
                },
              },
            },
          ],
    ),
  );
  const giving = part.windings.findIndex(({ use }) => GIVES.includes(use));
  const points = part.windings.flatMap((winding) => winding.points ?? []);
  if (giving < 0 || points.length >= 2) return guessed;
  const missing: Unknown = {
    ...about(part, `points ${points.length}`, "generator"),
    what: `${named(part)}: ${points.length === 0 ? "amps at a low and at a high speed" : "amps at a second speed"}`,
    howTo: "ammeter in the main lead, engine held at a read speed, note the volts too",
    answer: {
      kind: "point",
      put: {
        list: "parts",
        id: part.id,
        path: ["windings", giving, "points"],
        as: "new-point",
        within: part.windings[giving]?.points ?? [],
      },
    },
  };
  return [...guessed, missing];
}

/** A load nobody has measured has no element. */
function emptyElements(part: Part): readonly Unknown[] {
  if (!("elements" in part) || part.kind === "regulator") return [];
  const [a, b] = part.pins.filter(({ role }) => role !== "internal");
  if ((part.elements?.length ?? 0) > 0 || a === undefined || b === undefined) return [];
  return [
    {
      ...about(part, "element", "loads"),
      what: `${named(part)}: ohms between ${a.id} and ${b.id}`,
      howTo: howToMeasure(part.kind, "ohm"),
      answer: {
        kind: "number",
        unit: "ohm",
        put: {
          list: "parts",
          id: part.id,
          path: ["elements"],
          as: "element",
          within: [a.id, b.id],
        },
      },
    },
  ];
}

function guessedFigures(part: Part): readonly Unknown[] {
  const group = part.kind === "battery" || part.kind === "generator" ? part.kind : "loads";
  return partFigures(part)
    .filter(({ basis }) => basis === "estimated")
    .map(({ path, word, unit, value }) => ({
      ...about(part, path.join("-"), group),
      what: `${named(part)}: ${word}`,
      howTo: howToMeasure(part.kind, unit),
      guess: value,
      answer: { kind: "number", unit, put: { list: "parts", id: part.id, path, as: "valued" } },
    }));
}

function noPlace(job: Job, part: Part): readonly Unknown[] {
  if (part.station !== undefined || job.stations.length === 0) return [];
  return [
    {
      ...about(part, "place", "places"),
      what: `where ${named(part)} is`,
      howTo: "find it on the machine and name the nearest station",
      answer: {
        kind: "choice",
        options: job.stations.map(({ id, name }) => ({ value: id, word: name })),
        put: { list: "parts", id: part.id, path: ["station"], as: "plain" },
      },
    },
  ];
}
