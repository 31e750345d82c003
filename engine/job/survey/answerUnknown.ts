import type { Operation } from "../edit/operation.ts";
import type { Put } from "./unknown.ts";

/** What somebody found out: a number, a word, or a point of a generator. */
export type FoundOut =
  | number
  | string
  | { readonly speedRpm: number; readonly currentA: number; readonly atV: number };

/**
 * An answer written where it belongs, as measured. What was typed is kept beside it where the document has a place for it.
 *
 * @param typed as the person wrote it, with its unit
 */
export function answerUnknown(put: Put, found: FoundOut, typed?: string): Operation {
  const { list, id, path, as, within } = put;
  const entered = typed === undefined || typed === "" ? {} : { entered: typed.slice(0, 200) };
  const value = (): unknown => {
    switch (as) {
      case "valued":
        return { value: found, basis: "measured", ...entered };
      case "plain":
        return found;
      case "make":
        return { make: found, basis: "measured" };
      case "point-current":
        return { ...(within as object), currentA: found, basis: "measured" };
      case "new-point":
        return [...(within as readonly unknown[]), { ...(found as object), basis: "measured" }];
      case "element":
        return [{ pins: within, ohm: { value: found, basis: "measured", ...entered } }];
    }
  };
  return { op: "set", list, id, path, value: value() };
}
