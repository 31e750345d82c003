import { type Job, loadsOfPart, type Part } from "../../job/index.ts";
import { allowancesOf, cutLength, cutTotals } from "../../route/index.ts";
import type { EndFitting } from "../../size/index.ts";
import { allTables } from "../../tables/index.ts";
import { printNumber } from "../../units/index.ts";
import { colourCode, colourWords } from "../colourText.ts";
import type { PaperInput } from "../paperInput.ts";
import { terminalTotals } from "../terminalTotals.ts";
import { compareNumbers } from "../wireRows.ts";
import type { Good } from "./good.ts";

/** What a list of goods is made from. */
export type GoodsInput = Pick<PaperInput, "job" | "design" | "fittings">;

type Plain = Omit<Good, "colour" | "piecesM" | "unmeasured" | "neededCount">;

const pieces = (good: Plain, neededCount: number): Good => ({
  ...good,
  colour: null,
  neededCount,
  piecesM: [],
  unmeasured: [],
});

/** Everything a build takes from a shop: wire by make and colour, terminals with spares, splices, connectors, parts, spare fuses. */
export function goodsOf(input: GoodsInput): readonly Good[] {
  return [
    ...wireGoods(input),
    ...terminalGoods(input),
    ...spliceGoods(input),
    ...connectorGoods(input.job),
    ...present(input.job.parts).map((part) => partGood(part, input.job.supply.nominalV)),
    ...spareFuses(input.job),
  ];
}

const present = <T extends { readonly status?: string | undefined }>(
  list: readonly T[],
): readonly T[] => list.filter((one) => one.status === "new");

function wireGoods({ job, design }: GoodsInput): readonly Good[] {
  const nameOf = new Map(
    allTables.wires.rows.map((row) => [row.id as string, row.tradeName as string]),
  );
  const allowances = allowancesOf(job);
  const wasteRatio = 1 + allowances.wastePercent / 100;
  return cutTotals(job, design.routed, design.conductors).map((total): Good => {
    const colour = total.colour ?? undefined;
    const words = colourWords(colour);
    const own = present(job.wires).filter(
      (wire) =>
        design.conductors.get(wire.id)?.makeId === total.makeId &&
        colourWords(wire.colour) === words,
    );
    const piecesM = own.flatMap((wire) => {
      const route = design.routed.wires.get(wire.id);
      const cut = route === undefined ? null : cutLength(route, allowances);
      return cut === null ? [] : [(cut.total / 1000) * wasteRatio];
    });
    return {
      kind: "wire",
      makes: [total.makeId],
      colour: colour === undefined ? null : words.replaceAll(", ", "/"),
      group: "Wire",
      what: `${(nameOf.get(total.makeId) ?? total.makeId).replace("mm2", "mm²")}, ${words} (${colourCode(colour, job.colours.letters)})`,
      quantity: `${printNumber(total.buyM, 2)} m`,
      note:
        total.basis === "complete"
          ? `${pieceCount(total.wireCount)}, ${printNumber(total.cutMm / 1000, 2)} m cut`
          : `NOT FINAL: ${pieceCount(total.unknownWires.length)} not measured`,
      neededCount: null,
      piecesM: piecesM.toSorted((a, b) => b - a),
      unmeasured: total.unknownWires,
    };
  });
}

const pieceCount = (count: number): string => (count === 1 ? "1 piece" : `${count} pieces`);

function terminalGoods(input: GoodsInput): readonly Good[] {
  return terminalTotals(input).map((total) =>
    pieces(
      {
        kind: "terminal",
        makes: terminalMakes(total.fitting),
        group: "Terminals",
        what: total.name,
        quantity: String(total.buyCount),
        note: `${total.count} used; ${total.note}`,
      },
      total.buyCount,
    ),
  );
}

/** `ring-M6 2.5-6`, `ring-M6`; `blade-6.3 receptacle`, `blade-6.3`. */
function terminalMakes({
  terminal,
  kind,
  half,
  wireFromMm2,
  wireToMm2,
}: EndFitting): readonly string[] {
  const base = terminal ?? kind;
  const barrel = wireToMm2 === null ? [] : [`${wireFromMm2 ?? 0}-${wireToMm2}`];
  const halves = half === null || half === "mate of the fly lead" ? [] : [half.split(" ")[0]!];
  return [[base, ...halves, ...barrel], [base, ...halves], [base]]
    .map((words) => words.join(" "))
    .filter((make, k, all) => all.indexOf(make) === k);
}

/** Splice barrels with their sleeves, by the copper they hold. */
function spliceGoods({ job, design }: GoodsInput): readonly Good[] {
  const found = new Map<string, { readonly areaMm2: number; count: number }>();
  for (const joint of present(job.joints).filter(({ kind }) => kind === "crimped-splice")) {
    const wires = joint.ways.flatMap((way) => design.wiresAt.get(`${joint.id}.${way}`) ?? []);
    const areaMm2 = wires.reduce(
      (sum, { id }) => sum + (design.conductors.get(id)?.areaMm2 ?? 0),
      0,
    );
    const what = `Splice barrel for ${wires.length} wires, ${printNumber(areaMm2, 1)} mm² in all, with shrink sleeve`;
    found.set(what, { areaMm2, count: (found.get(what)?.count ?? 0) + 1 });
  }
  return [...found]
    .sort(([left], [right]) => compareNumbers(left, right))
    .map(([what, { areaMm2, count }]) =>
      pieces(
        {
          kind: "splice",
          makes: [`splice-${areaMm2.toFixed(1)}`, "splice"],
          group: "Joints",
          what,
          quantity: String(count + 1),
          note: `${count} used, one spare`,
        },
        count + 1,
      ),
    );
}

const connectorGoods = (job: Job): readonly Good[] =>
  present(job.connectors).map((connector) =>
    pieces(
      {
        kind: "connector",
        makes: [connector.id, `${connector.kind}-${connector.cavities.length}`],
        group: "Connectors",
        what: `${connector.name}, ${connector.cavities.length} ways, ${connector.kind}`,
        quantity: "1 pair",
        note: connector.id,
      },
      1,
    ),
  );

/** Two of each fuse on the machine. */
function spareFuses(job: Job): readonly Good[] {
  const fuses = job.parts.flatMap((part) =>
    part.kind === "fuse" && part.status !== "remove"
      ? [{ what: `${part.ratingA} A ${part.type}`, make: `${part.type}-${part.ratingA}` }]
      : [],
  );
  const kinds = new Map(fuses.map(({ what, make }) => [what, make]));
  return [...kinds]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([what, make]) =>
      pieces(
        {
          kind: "fuse",
          makes: [make],
          group: "Spare fuses",
          what: `Fuse ${what}`,
          quantity: "2",
          note: "kept under the seat",
        },
        2,
      ),
    );
}

/** A part as a shop knows it: by its place on this machine, by its lamp category or rating, by its kind and volts. */
export function partGood(part: Part, nominalV: number): Good {
  return pieces(
    {
      kind: part.kind === "fuse" ? "fuse" : "part",
      makes: [part.id, ...ratingMakes(part, nominalV)],
      group: "Parts",
      what: part.name,
      quantity: "1",
      note: part.id,
    },
    1,
  );
}

function ratingMakes(part: Part, nominalV: number): readonly string[] {
  switch (part.kind) {
    case "fuse":
      return [`${part.type}-${part.ratingA}`];
    case "lamp": {
      const categories = part.filaments.flatMap(({ category }) => category ?? []);
      const watts = part.filaments.map(({ ratedW }) => `${ratedW}W`).join("-");
      const made = part.source === "led" ? "led" : "lamp";
      const rated = `${made}-${part.filaments[0]!.ratedV}V-${watts}`;
      return categories.length === part.filaments.length ? [...categories, rated] : [rated];
    }
    case "battery":
      return [`battery-${part.nominalV}V-${part.capacityAh.value}Ah`, `battery-${part.nominalV}V`];
    case "relay":
    case "flasher":
    case "regulator":
    case "generator":
      return [`${part.kind}-${nominalV}V`];
    default:
      return loadsOfPart(part).length > 0 ? [`${part.kind}-${nominalV}V`] : [];
  }
}
