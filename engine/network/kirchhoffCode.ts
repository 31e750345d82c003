import type { Known } from "./meshCode.ts";
import { type Call, voltsAcross } from "./newtonCode.ts";
import {
  abs,
  addReal,
  atMost,
  type Code,
  copyBytes,
  equal,
  forRange,
  get,
  int,
  intAdd,
  intAt,
  intLess,
  intMul,
  intSub,
  type Local,
  leave,
  mul,
  not,
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

/**
 * The linear branches and a leak of `leakS` from every node, eliminated up to the split; what is left for the late columns is
 * kept in reducedS and reducedA.
 */
export function reduceCode(known: Known, call: Call): WasmFunction {
  return {
    name: "reduce",
    parameters: ["f64"],
    body: ([leakS], local) => {
      const [j, k] = [local("i32"), local("i32")];
      const bytes = (count: Code): Code => intMul(count, int(8));
      const from = (name: string, index: Code): Code => intAdd(known(name), bytes(index));
      const nodes = intAdd(known("unknownCount"), int(1));
      return [
        zeroBytes(known("value"), bytes(known("entryCount"))),
        zeroBytes(known("injectedA"), bytes(nodes)),
        forRange(j, int(0), known("unknownCount"), [
          putReal(
            known("value"),
            intSub(intAt(known("columnStart"), intAdd(get(j), int(1))), int(1)),
            get(leakS!),
          ),
        ]),
        forRange(k, int(0), known("branchCount"), addLinear(known, local, k)),
        call("eliminate", int(0), known("splitColumn")),
        copyBytes(
          known("reducedS"),
          from("value", known("firstLate")),
          bytes(intSub(known("entryCount"), known("firstLate"))),
        ),
        copyBytes(
          known("reducedA"),
          from("injectedA", known("splitColumn")),
          bytes(intSub(nodes, known("splitColumn"))),
        ),
      ];
    },
  };
}

function addLinear(known: Known, local: (type: ValueType) => Local, k: Local): Code {
  const [place, g, emfV] = [local("i32"), local("f64"), local("f64")];
  const injected = (end: string, value: Code): Code =>
    addReal(known("injectedA"), intAt(known(end), get(k)), value);
  return [
    set(place, intAt(known("entry"), get(k))),
    when(
      intLess(get(place), int(0)),
      [],
      [
        set(g, realAt(known("linearS"), get(k))),
        set(emfV, realAt(known("linearEmfV"), get(k))),
        addReal(known("value"), get(place), get(g)),
        when(
          equal(get(emfV), real(0)),
          [],
          [
            injected("positionA", mul(get(g), get(emfV))),
            injected("positionB", sub(real(0), mul(get(g), get(emfV)))),
          ],
        ),
      ],
    ),
  ];
}

/**
 * Every law at positionV, without any linearisation: branch currents into branchA, and the sum of currents leaving each node,
 * leak included, into leftoverA. Returns the largest |branch current|.
 */
export function measureCode(known: Known, call: Call): WasmFunction {
  return {
    name: "measure",
    parameters: ["f64"],
    result: "f64",
    body: ([leakS], local) => {
      const [j, k, s] = [local("i32"), local("i32"), local("i32")];
      const [currentA, largestA] = [local("f64"), local("f64")];
      const across = sub(voltsAcross(known, k), realAt(known("linearEmfV"), get(k)));
      const take: Code = [
        putReal(known("branchA"), get(k), get(currentA)),
        addReal(known("leftoverA"), intAt(known("positionA"), get(k)), get(currentA)),
        addReal(known("leftoverA"), intAt(known("positionB"), get(k)), sub(real(0), get(currentA))),
        keepLargest(largestA, currentA),
      ];
      return [
        forRange(j, int(0), intAdd(known("unknownCount"), int(1)), [
          putReal(known("leftoverA"), get(j), mul(get(leakS!), realAt(known("positionV"), get(j)))),
        ]),
        forRange(k, int(0), known("branchCount"), [
          set(currentA, mul(realAt(known("linearS"), get(k)), across)),
          take,
        ]),
        forRange(s, int(0), known("slotCount"), [
          set(k, intAt(known("branchOfSlot"), get(s))),
          putReal(known("slotV"), get(s), voltsAcross(known, k)),
          call("evaluate", get(s), real(0)),
          set(currentA, realAt(known("slotA"), get(s))),
          take,
        ]),
        get(largestA),
      ];
    },
  };
}

/** Largest |leftover| of the unknown nodes, A; NaN when any is NaN. */
export function largestLeftoverCode(known: Known): WasmFunction {
  return {
    name: "largestLeftover",
    parameters: [],
    result: "f64",
    body: (_none, local) => {
      const [j, currentA, largestA] = [local("i32"), local("f64"), local("f64")];
      return [
        forRange(j, int(0), known("unknownCount"), [
          set(currentA, realAt(known("leftoverA"), get(j))),
          keepLargest(largestA, currentA),
          when(equal(get(currentA), get(currentA)), [], leave(get(currentA))),
        ]),
        get(largestA),
      ];
    },
  };
}

function keepLargest(largest: Local, value: Local): Code {
  return when(not(atMost(abs(get(value)), get(largest))), set(largest, abs(get(value))));
}

/** Evaluates every slot at slotV, unless its line still serves. */
export function evaluateAllCode(known: Known, call: Call): WasmFunction {
  return {
    name: "evaluateAll",
    parameters: [],
    body: (_none, local) => {
      const s = local("i32");
      return forRange(
        s,
        int(0),
        known("slotCount"),
        call("evaluate", get(s), realAt(known("stillV"), get(s))),
      );
    },
  };
}
