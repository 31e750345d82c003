import type { WireFact } from "@copperwright/engine";
import type { SumSentence } from "../../store/documentState.ts";
import { figureText } from "../proof/sumOf.ts";

/** One figure of a wire as the sentence of the sum line: equation with the numbers in it, where each came from, what it is held against. */
export function factSum(name: string, { working, limit, note }: WireFact): SumSentence {
  const { equation, inputs, value, unit } = working;
  const used = limit === null ? null : value / limit.value;
  return {
    name,
    result: figureText(value, unit),
    equation: numbersIn(equation, inputs),
    inputs: inputs.map((input) => ({
      text: `${input.name} ${figureText(input.value, input.unit)}`,
      from: input.from,
    })),
    note: [
      note,
      limit === null ? "" : `limit ${figureText(limit.value, limit.unit)}, ${limit.whose}`,
    ]
      .filter(Boolean)
      .join(" · "),
    ...(used === null
      ? {}
      : {
          usedRatio: used,
          usedText: `${figureText(value, unit)} of ${figureText(limit!.value, limit!.unit)}`,
        }),
  };
}

/** The letters of an equation replaced by their numbers; signs as a person reads them. */
function numbersIn(
  equation: string,
  inputs: readonly {
    readonly name: string;
    readonly value: number | string;
    readonly unit: string;
  }[],
): string {
  const byName = new Map(inputs.map((input) => [input.name, figureText(input.value, input.unit)]));
  const [, right = equation] = equation.includes(" = ") ? equation.split(" = ") : [];
  return right
    .split(/(\s+|\^2)/)
    .map((word) => byName.get(word) ?? word)
    .join("")
    .replaceAll(" x ", " × ")
    .replaceAll("^2", "²");
}
