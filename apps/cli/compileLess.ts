import { setFlagsFromString } from "node:v8";

/**
 * Tells the language's compiler to make machine code only of what runs often, and to copy less of one function into another. Making a pack is one short run
 * over much code: as it comes, compiling takes a third of the processor time of a pack, on the very processors that draw and prove.
 * Only how long it takes depends on it.
 */
export function compileLess(): void {
  setFlagsFromString("--sparkplug");
  setFlagsFromString("--interrupt-budget=400000");
  setFlagsFromString("--max-inlined-bytecode-size-cumulative=200");
}
