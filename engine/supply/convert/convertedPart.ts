import type { Part, PartOf } from "../../job/index.ts";
import type { ConvertAction } from "./convertRow.ts";

/** From which system volts to which. */
export interface VoltStep {
  readonly fromV: number;
  readonly toV: number;
}

/** A part after the change, and why. */
export interface ConvertedPart {
  readonly part: Part;
  readonly action: ConvertAction;
  readonly reason: string;
}

type Valued = NonNullable<PartOf<"battery">["restV"]>;
/** Horn, coil, heater, resistor, box. */
export type LoadPart = Extract<Part, { readonly elements: readonly unknown[] }>;
type Element = LoadPart["elements"][number];

/** An estimate, until somebody reads the new part: the value times a ratio. */
export const times = (value: Valued, ratio: number): Valued => ({
  value: value.value * ratio,
  basis: "estimated",
});

/** The same watts at other volts need ohms times the square of their ratio. */
export const elementsAt = (elements: readonly Element[], { fromV, toV }: VoltStep): Element[] =>
  elements.map((one) => ({ ...one, ohm: times(one.ohm, (toV / fromV) ** 2) }));
