import type { Connector, Job } from "../../job/index.ts";
import { type EndFitting, endFittings } from "../../size/index.ts";
import { colourCode, colourWords } from "../colourText.ts";
import { pinReader } from "../pinText.ts";
import type { SceneAsked } from "../scenes/sceneSource.ts";
import { sourceOf } from "../scenes/sceneSource.ts";
import { kindText, problemText, terminalName } from "../terminalText.ts";
import { numberOf, sizeText, wiresInOrder } from "../wireRows.ts";

/** One wire to cut and fit, with everything the bench needs to know of it. */
export interface BuildCard {
  readonly wire: string;
  readonly number: string;
  readonly loom: string | null;
  readonly circuit: string;
  /** Null: not measured, not to be cut. */
  readonly cutMm: number | null;
  readonly isEstimated: boolean;
  readonly colour: { readonly main: string; readonly tracer?: string | undefined } | null;
  readonly colourWords: string;
  readonly colourCode: string;
  readonly size: string;
  readonly stranding: string;
  readonly ends: readonly BuildEnd[];
}

export interface BuildEnd {
  readonly end: "from" | "to";
  /** "DIP MN". */
  readonly pin: string;
  readonly where: string;
  readonly terminal: string;
  readonly kind: string;
  readonly sleeveFirst: "sleeve" | "seal" | null;
  readonly stripMm: number;
  readonly tool: string;
  readonly joining: string;
  /** Least force a sample must hold, N. */
  readonly pullN: number | null;
  readonly problem: string;
  /** Numbers of the wires crimped into the same barrel. */
  readonly sharedWith: readonly string[];
  readonly cavity: CavityPlace | null;
}

/** Where in its connector an end goes, seen from the side the wire goes in. */
export interface CavityPlace {
  readonly connector: string;
  readonly half: "plug" | "socket";
  readonly cavity: string;
  /** Row by row, left to right, seen from the wire side. */
  readonly rows: readonly (readonly string[])[];
}

/** A card for every new wire of the loom, in the order of their numbers. Fly leads bring their own ends and have none. */
export function buildCards(asked: SceneAsked): readonly BuildCard[] {
  const { input } = sourceOf(asked);
  const { job, design } = input;
  const numbers = new Map(job.wires.map((wire) => [wire.id, numberOf(wire)]));
  const ends = new Map<string, EndFitting[]>();
  for (const fitting of endFittings(job, design.conductors)) {
    ends.set(fitting.wire, [...(ends.get(fitting.wire) ?? []), fitting]);
  }
  const pins = pinReader(job);
  const circuits = new Map(job.circuits.map(({ id, name }) => [id, name]));
  return wiresInOrder(input)
    .filter(({ wire }) => wire.status === "new")
    .map(({ wire, row }): BuildCard => {
      const { area, stranding } = sizeText(row);
      return {
        wire: wire.id,
        number: numberOf(wire),
        loom: wire.loom ?? null,
        circuit: circuits.get(wire.circuit) ?? wire.circuit,
        cutMm: row.cutMm?.total ?? null,
        isEstimated: row.lengthBasis === "estimated",
        colour: wire.colour ?? null,
        colourWords: colourWords(wire.colour),
        colourCode: colourCode(wire.colour, job.colours.letters),
        size: area,
        stranding,
        ends: [...(ends.get(wire.id) ?? [])]
          .sort((a, b) => (a.end < b.end ? -1 : 1))
          .map((fitting) => endOf(job, fitting, pins, numbers)),
      };
    });
}

function endOf(
  job: Job,
  fitting: EndFitting,
  pins: ReturnType<typeof pinReader>,
  numbers: ReadonlyMap<string, string>,
): BuildEnd {
  const { what, where } = pins(fitting.pin);
  return {
    end: fitting.end,
    pin: what,
    where,
    terminal: terminalName(fitting),
    kind: kindText(fitting),
    sleeveFirst: fitting.sleeveFirst,
    stripMm: fitting.stripMm,
    tool: fitting.tool,
    joining: fitting.joining,
    pullN: fitting.pullN,
    problem: problemText(fitting),
    sharedWith: fitting.sharedWith.map((id) => numbers.get(id) ?? id),
    cavity: cavityOf(job.connectors, fitting.pin),
  };
}

/** Cavities in the order the connector view draws them from the wire side. */
function cavityOf(connectors: readonly Connector[], pin: string): CavityPlace | null {
  const [owner = "", pinId = ""] = pin.split(".");
  const connector = connectors.find(({ id }) => id === owner);
  if (connector === undefined) return null;
  const perRow = Math.ceil(connector.cavities.length / (connector.rowCount ?? 1));
  const rows: (readonly string[])[] = [];
  for (let i = 0; i < connector.cavities.length; i += perRow) {
    rows.push(connector.cavities.slice(i, i + perRow));
  }
  const half = pinId.endsWith("p") ? "plug" : "socket";
  return { connector: connector.name || connector.id, half, cavity: pinId.slice(0, -1), rows };
}
