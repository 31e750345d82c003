import type { Colour, Job, Part } from "../job.ts";
import type { JsonPath } from "../read/jsonPointer.ts";

export type RowKind =
  | "colour"
  | "scheme"
  | "make"
  | "stud"
  | "terminal"
  | "connector"
  | "lamp"
  | "dropClass";

/** A place of the job that holds the name of a table row. */
export type RowUse = readonly [kind: RowKind, path: JsonPath, id: string | undefined];

/** Every place of the job that names a row of a published table. */
export function rowUses(job: Job): readonly RowUse[] {
  const { dropLimits, stockMakes } = job.decisions;
  return [
    ["scheme", ["colours", "scheme"], job.colours.scheme],
    ...job.bodies.flatMap((body, i) =>
      body.points.map(
        (point, k): RowUse => ["stud", ["bodies", i, "points", k, "stud"], point.stud],
      ),
    ),
    ...job.parts.flatMap(usesOfPart),
    ...job.connectors.map(({ kind }, i): RowUse => ["connector", ["connectors", i, "kind"], kind]),
    ...job.wires.flatMap((wire, i): readonly RowUse[] => [
      ...usesOfColour(["wires", i, "colour"], wire.colour),
      ["make", ["wires", i, "size", "make"], wire.size?.make],
      ["terminal", ["wires", i, "fromEnd", "terminal"], wire.fromEnd?.terminal],
      ["terminal", ["wires", i, "toEnd", "terminal"], wire.toEnd?.terminal],
    ]),
    ...(stockMakes ?? []).map((id, k): RowUse => ["make", ["decisions", "stockMakes", k], id]),
    ...(dropLimits ?? []).map(
      ({ dropClass }, k): RowUse => [
        "dropClass",
        ["decisions", "dropLimits", k, "dropClass"],
        dropClass,
      ],
    ),
  ];
}

function usesOfPart(part: Part, i: number): readonly RowUse[] {
  const pins = part.pins.flatMap((pin, k): readonly RowUse[] => {
    const at = ["parts", i, "pins", k];
    const lead = [...at, "flyLead"];
    return [
      ["stud", [...at, "stud"], pin.stud],
      ...usesOfColour([...lead, "colour"], pin.flyLead?.colour),
      ["make", [...lead, "make"], pin.flyLead?.make],
      ["terminal", [...lead, "terminal"], pin.flyLead?.terminal],
    ];
  });
  if (part.kind !== "lamp") return pins;
  const lamps = part.filaments.map(
    ({ category }, k): RowUse => ["lamp", ["parts", i, "filaments", k, "category"], category],
  );
  return [...pins, ...lamps];
}

function usesOfColour(path: JsonPath, colour: Colour | undefined): readonly RowUse[] {
  if (colour === undefined) return [];
  return (["main", "tracer", "secondTracer"] as const).map(
    (part): RowUse => ["colour", [...path, part], colour[part]],
  );
}
