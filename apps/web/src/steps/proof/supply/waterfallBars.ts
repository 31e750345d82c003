import type { SupplyAnswer } from "@copperwright/engine";

type FallStep = NonNullable<SupplyAnswer["lampFall"]>["fall"][number];

/** One step of falling volts, or the load itself between its two sides. */
export interface WaterfallBar {
  readonly key: string;
  readonly name: string;
  readonly side: FallStep["side"];
  readonly dropV: number;
  readonly currentA: number;
  /** Where the bar begins and how long it is, as shares of all that is lost; the load has none. */
  readonly fromRatio: number;
  readonly lengthRatio: number;
  /** Ids of wires and parts it stands for. */
  readonly of: readonly string[];
}

/** Steps under this share of what is lost stand as one. */
const SMALL_RATIO = 0.01;
const SIDES = ["battery", "live", "load", "earth"] as const;

/** Volts lost step by step, each bar beginning where the one before it ended. */
export function waterfallBars(
  fall: readonly FallStep[],
  names: Readonly<Record<string, string>>,
): readonly WaterfallBar[] {
  const lostV = fall.reduce((sum, { side, dropV }) => (side === "load" ? sum : sum + dropV), 0);
  const bars: WaterfallBar[] = [];
  let beforeV = 0;
  const add = (bar: Pick<WaterfallBar, "name" | "side" | "dropV" | "currentA" | "of">): void => {
    const isLoad = bar.side === "load";
    const share = (v: number): number => (isLoad || lostV === 0 ? 0 : v / lostV);
    bars.push({
      ...bar,
      key: `${bar.side} ${bar.of.join(" ")}`,
      fromRatio: share(beforeV),
      lengthRatio: share(bar.dropV),
    });
    if (!isLoad) beforeV += bar.dropV;
  };
  for (const side of SIDES) {
    const steps = fall.filter((step) => step.side === side);
    const few = steps.filter(({ dropV }) => side !== "load" && dropV < SMALL_RATIO * lostV);
    const small = few.length > 1 ? few : [];
    for (const step of steps) {
      if (!small.includes(step)) add({ ...step, name: names[step.of] ?? step.of, of: [step.of] });
    }
    if (small.length > 0) {
      add({
        name: `${small.length} small steps`,
        side,
        dropV: small.reduce((sum, { dropV }) => sum + dropV, 0),
        currentA: Math.max(...small.map(({ currentA }) => currentA)),
        of: small.map(({ of }) => of),
      });
    }
  }
  return bars.map((bar) =>
    isRepeated(bar, bars) ? { ...bar, name: `${bar.name}, ${bar.of[0]}` } : bar,
  );
}

/** Contacts and pins of one part lie on the same way: then the pins tell them apart. */
const isRepeated = (bar: WaterfallBar, bars: readonly WaterfallBar[]): boolean =>
  bar.side !== "load" &&
  bar.of.length === 1 &&
  bars.some((one) => one !== bar && one.name === bar.name && one.side !== "load");
