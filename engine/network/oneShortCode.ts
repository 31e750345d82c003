import type { Known } from "./meshCode.ts";
import type { Call } from "./newtonCode.ts";
import {
  add,
  type Code,
  copyBytes,
  div,
  forRange,
  get,
  int,
  intAdd,
  intMul,
  intSub,
  mul,
  putReal,
  real,
  realAt,
  set,
  sub,
} from "./wasmCode.ts";
import type { WasmFunction } from "./wasmModule.ts";

/**
 * What `applyShorts` does, for the one short that nearly every fault is: y := L⁻¹·y through the late columns,
 * α = (yᵀ·D⁻¹·s)/(R + yᵀ·D⁻¹·y), s := s − α·y.
 */
export function applyOneShortCode(known: Known, call: Call): WasmFunction {
  return {
    name: "applyOneShort",
    parameters: [],
    body: (_none, local) => {
      const [j, weighted, alphaA] = [local("i32"), local("f64"), local("f64")];
      const [ohm, v] = [local("f64"), local("f64")];
      const y = known("shortColumn");
      const s = known("injectedA");
      const range = [known("splitColumn"), known("unknownCount")] as const;
      const bytes = (count: Code): Code => intMul(count, int(8));
      const lateCount = intAdd(intSub(range[1], range[0]), int(1));
      return [
        copyBytes(intAdd(y, bytes(range[0])), known("shortLate"), bytes(lateCount)),
        call("forward", ...range, y),
        set(ohm, realAt(known("oneShort"), int(0))),
        set(v, realAt(known("oneShort"), int(1))),
        forRange(j, ...range, [
          set(weighted, mul(realAt(y, get(j)), realAt(known("pivotOhm"), get(j)))),
          set(ohm, add(get(ohm), mul(get(weighted), realAt(y, get(j))))),
          set(v, add(get(v), mul(get(weighted), realAt(s, get(j))))),
        ]),
        set(alphaA, div(get(v), get(ohm))),
        putReal(known("oneShort"), int(2), get(alphaA)),
        call("addScaled", ...range, s, y, sub(real(0), get(alphaA))),
      ];
    },
  };
}
