import { resolveWire } from "../tables/index.ts";

export interface NamedMakes {
  /** What the name was read as; null: not a name of a wire. */
  readonly readAs: string | null;
  /** Makes it can be, ids of tables/wires with the trade's name. */
  readonly makes: readonly { readonly id: string; readonly name: string }[];
  /** What is to be asked where several are left. */
  readonly ask: string | null;
  readonly warning: string | null;
  /** Why it cannot be read and what to type; null: it was. */
  readonly refusal: string | null;
}

/** Makes of wire that a name of the trade can mean: `32/0.20`, `1.0 mm2`, `16 AWG`, `44/0.30 thin`. A person chooses where there are several. */
export function makesNamed(text: string): NamedMakes {
  const { refusal, readAs, candidates, ask, warning } = resolveWire(text);
  if (refusal !== null) {
    const why = `${refusal.message} ${refusal.remedy}`;
    return { readAs: null, makes: [], ask: null, warning: null, refusal: why };
  }
  const makes = candidates.map(({ id, tradeName }) => ({ id, name: tradeName }));
  return { readAs, makes, ask, warning, refusal: null };
}
