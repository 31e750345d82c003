import type { Known } from "./meshCode.ts";
import type { Call } from "./newtonCode.ts";
import {
  add,
  addReal,
  type Code,
  copyBytes,
  div,
  forRange,
  get,
  int,
  intAdd,
  intLess,
  intMul,
  intSub,
  type Local,
  mul,
  putReal,
  real,
  realAt,
  set,
  sub,
  type ValueType,
  when,
  zeroBytes,
} from "./wasmCode.ts";
import type { WasmFunction } from "./wasmModule.ts";

const bytes = (count: Code): Code => intMul(count, int(8));

/**
 * What `shortColumns` does, for the one short that nearly every fault is: y = e_a − e_b through the early columns, with the
 * sums R + yᵀ·D⁻¹·y and yᵀ·D⁻¹·s over them.
 */
export function startOneShortCode(known: Known, call: Call): WasmFunction {
  return {
    name: "startOneShort",
    parameters: ["i32", "i32", "f64"],
    body: ([placeA, placeB, ohm], local) => {
      const v = local("f64");
      const first = local("i32");
      const y = known("shortColumn");
      const split = known("splitColumn");
      const nodes = intAdd(known("unknownCount"), int(1));
      return [
        zeroBytes(y, bytes(nodes)),
        addReal(y, get(placeA!), real(1)),
        addReal(y, get(placeB!), real(-1)),
        // Nothing happens before the first of its two nodes.
        when(
          intLess(get(placeA!), get(placeB!)),
          set(first, get(placeA!)),
          set(first, get(placeB!)),
        ),
        when(intLess(get(first), split), [
          call("forward", get(first), split, y),
          weigh(known, local, [get(first), split], { ohm: ohm!, v }),
        ]),
        copyBytes(known("shortLate"), intAdd(y, bytes(split)), bytes(intSub(nodes, split))),
        putReal(known("oneShort"), int(0), get(ohm!)),
        putReal(known("oneShort"), int(1), get(v)),
      ];
    },
  };
}

/** What `applyShorts` does for it: y := L⁻¹·y through the late columns, α = (yᵀ·D⁻¹·s)/(R + yᵀ·D⁻¹·y), s := s − α·y. */
export function applyOneShortCode(known: Known, call: Call): WasmFunction {
  return {
    name: "applyOneShort",
    parameters: [],
    body: (_none, local) => {
      const [alphaA, ohm, v] = [local("f64"), local("f64"), local("f64")];
      const y = known("shortColumn");
      const range = [known("splitColumn"), known("unknownCount")] as const;
      const lateCount = intAdd(intSub(range[1], range[0]), int(1));
      return [
        copyBytes(intAdd(y, bytes(range[0])), known("shortLate"), bytes(lateCount)),
        call("forward", ...range, y),
        set(ohm, realAt(known("oneShort"), int(0))),
        set(v, realAt(known("oneShort"), int(1))),
        weigh(known, local, range, { ohm, v }),
        set(alphaA, div(get(v), get(ohm))),
        putReal(known("oneShort"), int(2), get(alphaA)),
        call("addScaled", ...range, known("injectedA"), y, sub(real(0), get(alphaA))),
      ];
    },
  };
}

/** ohm += Σ y²/d and v += Σ y·s/d over a range of columns. */
function weigh(
  known: Known,
  local: (type: ValueType) => Local,
  range: readonly [Code, Code],
  { ohm, v }: { ohm: Local; v: Local },
): Code {
  const [j, weighted] = [local("i32"), local("f64")];
  const y = realAt(known("shortColumn"), get(j));
  return forRange(j, ...range, [
    set(weighted, mul(y, realAt(known("pivotOhm"), get(j)))),
    set(ohm, add(get(ohm), mul(get(weighted), y))),
    set(v, add(get(v), mul(get(weighted), realAt(known("injectedA"), get(j))))),
  ]);
}
