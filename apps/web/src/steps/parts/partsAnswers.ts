import {
  type PricedShopping,
  pricedShopping,
  type Refusal,
  readStockList,
  shoppingGoods,
} from "@copperwright/engine";
import { type BuildCard, buildCards } from "@copperwright/engine/scenes";
import type { Held } from "../../engine/held.ts";

export type PartsView =
  | {
      readonly ok: true;
      readonly priced: PricedShopping;
      readonly hasList: boolean;
      readonly passedOver: number;
    }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** Wires of one make and colour, cut from the same reel. */
export interface CutGroup {
  readonly key: string;
  readonly colourWords: string;
  readonly colourCode: string;
  readonly colour: BuildCard["colour"];
  readonly size: string;
  readonly stranding: string;
  readonly totalMm: number;
  readonly unmeasuredCount: number;
  readonly wires: readonly {
    readonly wire: string;
    readonly number: string;
    readonly cutMm: number | null;
  }[];
}

export const partsAnswers = {
  /** What to buy, with prices where a shop's list is given. */
  partsShopping(held: Held, { stockText }: { readonly stockText: string | null }): PartsView {
    const checked = held.checked();
    if (stockText === null) {
      const rows = shoppingGoods(checked).map((good) => ({
        ...good,
        bought: [],
        price: null,
        missing: null,
        leftoverCount: null,
        reels: [],
      }));
      const priced = {
        currency: "",
        rows,
        totalPrice: 0,
        isComplete: false,
        missingCount: rows.length,
      };
      return { ok: true, priced, hasList: false, passedOver: 0 };
    }
    const read = readStockList(stockText);
    if (!read.ok) return read;
    return {
      ok: true,
      priced: pricedShopping(checked, read.stock),
      hasList: true,
      passedOver: read.stock.passedOver.length,
    };
  },

  /** Whether a text is a price list, before it takes the place of another. */
  partsListRead(
    _held: Held,
    { text }: { readonly text: string },
  ): { readonly ok: true } | { readonly ok: false; readonly refusals: readonly Refusal[] } {
    const read = readStockList(text);
    return read.ok ? { ok: true } : read;
  },

  /** What to cut, reel by reel, longest first. */
  partsCuts(held: Held): readonly CutGroup[] {
    const groups = new Map<string, BuildCard[]>();
    for (const card of buildCards(held.scenes())) {
      const key = `${card.size} ${card.stranding} ${card.colourWords}`;
      groups.set(key, [...(groups.get(key) ?? []), card]);
    }
    return [...groups]
      .sort(([a], [b]) => (a < b ? -1 : 1))
      .map(([key, cards]) => cutGroup(key, cards));
  },
};

function cutGroup(key: string, cards: readonly BuildCard[]): CutGroup {
  const [first] = cards;
  const byLength = [...cards].sort((a, b) => (b.cutMm ?? 0) - (a.cutMm ?? 0));
  return {
    key,
    colourWords: first!.colourWords,
    colourCode: first!.colourCode,
    colour: first!.colour,
    size: first!.size,
    stranding: first!.stranding,
    totalMm: cards.reduce((sum, { cutMm }) => sum + (cutMm ?? 0), 0),
    unmeasuredCount: cards.filter(({ cutMm }) => cutMm === null).length,
    wires: byLength.map(({ wire, number, cutMm }) => ({ wire, number, cutMm })),
  };
}
