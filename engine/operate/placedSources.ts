import type { JobNetwork } from "./buildJobNetwork.ts";
import type { GeneratorLine } from "./generatorLine.ts";
import type { SupplySource } from "./supplySources.ts";

/** A source with the places of its elements and nodes in the network. */
export interface PlacedSource {
  readonly source: SupplySource;
  readonly line: GeneratorLine | null;
  /** Indices of elements; −1: it has none. */
  readonly output: number;
  readonly exciter: number;
  readonly cutOut: number;
  readonly fieldWinding: number;
  /** Indices of nodes. */
  readonly positive: number;
  readonly negative: number;
  /** Null: holds the volts at its own output. */
  readonly sense: number | null;
}

/** Looked up once a job; sources in the order of `jobNetwork.sources`. */
export function placedSources({
  sources,
  elements,
  nodes,
  context,
}: JobNetwork): readonly PlacedSource[] {
  const node = (name: string): number => nodes.indexOf.get(name)!;
  return sources.map((source) => {
    const { generator, regulator, sense } = source;
    const byRole = (role: "supply" | "exciter"): number =>
      elements.findIndex((one) => one.role.role === role && one.role.generator === generator);
    const part = context.parts.find((one) => one.id === generator);
    const field =
      part?.kind === "generator" ? part.windings.find(({ use }) => use === "field") : undefined;
    const fieldOf = field && `${generator}:${field.pins[0]}-${field.pins[1] ?? "case"}`;
    return {
      source,
      line: source.line,
      output: byRole("supply"),
      exciter: byRole("exciter"),
      cutOut: elements.findIndex(
        ({ role }) => role.role === "cutOut" && role.regulator === regulator,
      ),
      fieldWinding: elements.findIndex(({ kind, of }) => kind === "coil" && of === fieldOf),
      positive: node(source.positive),
      negative: node(source.negative),
      sense: sense === null ? null : node(sense),
    };
  });
}
