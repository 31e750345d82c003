import { type CompiledNetwork, compileNetwork } from "./compileNetwork.ts";
import type { Branch } from "./network.ts";
import type { Short } from "./solution.ts";

/** The network with shorts as branches of its own, after all others, compiled anew. */
export function withShorts(compiled: CompiledNetwork, shorts: readonly Short[]): CompiledNetwork {
  const { network } = compiled;
  const extra = shorts.map(
    ({ a, b, ohm }, k): Branch => ({ id: `short ${k}`, a, b, law: { kind: "ohm", ohm } }),
  );
  return compileNetwork({ ...network, branches: [...network.branches, ...extra] });
}
