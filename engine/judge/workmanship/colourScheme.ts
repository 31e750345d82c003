import type { Job } from "../../job/index.ts";
import { namesInWords } from "../../messages/index.ts";
import { colourSchemes, colours } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Judge } from "../judge.ts";
import { colourKey, schemeKey } from "./colourKey.ts";

const keysOf = (scheme: string): ReadonlySet<string> =>
  new Set(colourSchemes.filter((row) => row.scheme === scheme).map(schemeKey));

/** Wires by colour, in order of their ids. */
function wiresByColour({ wires }: Job): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const { id, colour } of [...wires].sort((a, b) => (a.id < b.id ? -1 : 1))) {
    if (colour === undefined) continue;
    const key = colourKey(colour);
    found.set(key, [...(found.get(key) ?? []), id]);
  }
  return found;
}

/** Colours the job's scheme does not list: the person's own code, which has to be printed with the machine. */
export const colourOutsideScheme: Judge = ({ job }) => {
  const { scheme } = job.colours;
  if (scheme === "none") return [];
  const known = keysOf(scheme);
  const outside = [...wiresByColour(job)].filter(([key]) => !known.has(key));
  const wires = outside.flatMap(([, ids]) => ids).sort();
  const [first, ...others] = wires;
  if (first === undefined) return [];
  return [
    findingOf({
      code: "colour-outside-scheme",
      severity: "advise",
      subject: { kind: "wire", id: first },
      also: others,
      numbers: {
        wireCount: wires.length,
        colours: namesInWords(outside.map(([key]) => key).sort()),
        scheme,
      },
      limit: null,
    }),
  ];
};

/** Wires that will be on the machine and have no colour. */
export const colourMissing: Judge = ({ job }) => {
  const [first, ...others] = job.wires
    .filter(({ colour }) => colour === undefined)
    .map(({ id }) => id)
    .sort();
  if (first === undefined) return [];
  return [
    findingOf({
      code: "colour-missing",
      severity: "advise",
      subject: { kind: "wire", id: first },
      also: others,
      numbers: { wireCount: others.length + 1 },
      limit: null,
    }),
  ];
};

/** The two British lists disagree, and each is for its own kind of vehicle. */
export const britishLists: Judge = ({ job }) => {
  const { scheme } = job.colours;
  const isWrong =
    (scheme === "british-car" && job.machine.kind === "motorcycle") ||
    (scheme === "british-motorcycle" && job.machine.kind === "car");
  if (!isWrong) return [];
  const [car, motorcycle] = [keysOf("british-car"), keysOf("british-motorcycle")];
  const clashes = [...wiresByColour(job).keys()].filter(
    (key) => car.has(key) && motorcycle.has(key),
  );
  return [
    findingOf({
      code: "british-lists",
      severity: "advise",
      subject: { kind: "job", id: job.id },
      numbers: {
        scheme,
        machineKind: job.machine.kind,
        colours: clashes.length === 0 ? null : clashes.sort().join(", "),
      },
      limit: null,
    }),
  ];
};

/** Letters on the drawing that mean another colour in the international code: GN is green/brown in one and green in the other. */
export const colourLetters: Judge = ({ job }) => {
  const { letters, scheme } = job.colours;
  if (letters !== "british" && !scheme.startsWith("british")) return [];
  const byWord = new Map(colours.map((row) => [row.word, row]));
  const iec = new Map(colours.flatMap((row) => (row.iec60757 ? [[row.iec60757, row.word]] : [])));
  const clashes = [...wiresByColour(job)].flatMap(([key, wires]) => {
    const code = key
      .split("/")
      .map((word) => byWord.get(word)?.au7 ?? "")
      .join("");
    const other = iec.get(code);
    return other === undefined || other === key ? [] : [{ code, key, other, wires }];
  });
  const wires = clashes.flatMap((one) => one.wires).sort();
  const [first, ...others] = wires;
  if (first === undefined) return [];
  return [
    findingOf({
      code: "colour-letters",
      severity: "advise",
      subject: { kind: "wire", id: first },
      also: others,
      numbers: {
        letters,
        clashes: clashes
          .map(({ code, key, other }) => `${code} (here ${key}, internationally ${other})`)
          .sort()
          .join(", "),
      },
      limit: null,
    }),
  ];
};
