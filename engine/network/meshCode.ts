import {
  add,
  addReal,
  type Code,
  div,
  equal,
  forRange,
  get,
  int,
  intAdd,
  intAt,
  intAtLeast,
  intEqual,
  intSub,
  type Local,
  mul,
  putReal,
  real,
  realAt,
  set,
  type ValueType,
  when,
  whileTrue,
} from "./wasmCode.ts";
import type { WasmFunction } from "./wasmModule.ts";

/** Address of an array, or a count, as code. */
export type Known = (name: string) => Code;

const RANGE = ["i32", "i32"] as const;

/**
 * Eliminates columns from .. to − 1: d = Σ g_j, w_i = g_ij / d, g_ik += w_i · g_kj, and carries the injected currents along:
 * s_i += w_i · s_j. Columns joined to two others (the middle of a chain) are nearly all there is and are written out.
 */
export function eliminateCode(known: Known): WasmFunction {
  return {
    name: "eliminate",
    parameters: RANGE,
    body: ([from, to], local) => {
      const [j, start, end] = [local("i32"), local("i32"), local("i32")];
      const [sourceA, ohm] = [local("f64"), local("f64")];
      const shared = { known, local, j, start, end, sourceA, ohm };
      return forRange(j, get(from!), get(to!), [
        set(start, intAt(known("columnStart"), get(j))),
        set(end, intAt(known("columnStart"), intAdd(get(j), int(1)))),
        set(sourceA, realAt(known("injectedA"), get(j))),
        when(
          intEqual(intSub(get(end), get(start)), int(3)),
          middleOfChain(shared),
          anyColumn(shared),
        ),
      ]);
    },
  };
}

interface Column {
  readonly known: Known;
  readonly local: (type: ValueType) => Local;
  readonly j: Local;
  readonly start: Local;
  readonly end: Local;
  readonly sourceA: Local;
  readonly ohm: Local;
}

function middleOfChain({ known, local, j, start, sourceA, ohm }: Column): Code {
  const [g1, g2, g0] = [local("f64"), local("f64"), local("f64")];
  const [w1, w2, t] = [local("f64"), local("f64"), local("i32")];
  const value = known("value");
  const at = (k: number): Code => intAdd(get(start), int(k));
  const target = (k: number): Code => intAt(known("updateTarget"), intAdd(get(t), int(k)));
  const row = (k: number): Code => intAt(known("rowIndex"), at(k));
  return [
    set(g1, realAt(value, at(0))),
    set(g2, realAt(value, at(1))),
    set(g0, realAt(value, at(2))),
    set(ohm, div(real(1), add(add(get(g1), get(g2)), get(g0)))),
    set(w1, mul(get(g1), get(ohm))),
    set(w2, mul(get(g2), get(ohm))),
    set(t, intAt(known("updateStart"), get(j))),
    putReal(known("pivotOhm"), get(j), get(ohm)),
    putReal(value, at(0), get(w1)),
    putReal(value, at(1), get(w2)),
    addReal(value, target(0), mul(get(w1), get(g2))),
    addReal(value, target(1), mul(get(w1), get(g0))),
    addReal(value, target(2), mul(get(w2), get(g0))),
    addReal(known("injectedA"), row(0), mul(get(w1), get(sourceA))),
    addReal(known("injectedA"), row(1), mul(get(w2), get(sourceA))),
  ];
}

function anyColumn({ known, local, j, start, end, sourceA, ohm }: Column): Code {
  const [p, q, t] = [local("i32"), local("i32"), local("i32")];
  const [sumS, w] = [local("f64"), local("f64")];
  const value = known("value");
  const inner: Code = [
    addReal(value, intAt(known("updateTarget"), get(t)), mul(get(w), realAt(value, get(q)))),
    set(t, intAdd(get(t), int(1))),
  ];
  return [
    set(sumS, real(0)),
    forRange(p, get(start), get(end), set(sumS, add(get(sumS), realAt(value, get(p))))),
    set(ohm, div(real(1), get(sumS))),
    putReal(known("pivotOhm"), get(j), get(ohm)),
    set(t, intAt(known("updateStart"), get(j))),
    forRange(p, get(start), intSub(get(end), int(1)), [
      set(w, mul(realAt(value, get(p)), get(ohm))),
      forRange(q, intAdd(get(p), int(1)), get(end), inner),
      addReal(known("injectedA"), intAt(known("rowIndex"), get(p)), mul(get(w), get(sourceA))),
      putReal(value, get(p), get(w)),
    ]),
  ];
}

/** s := L⁻¹ s through columns from .. to − 1, for the n + 1 currents at `source`. Columns without current cost nothing. */
export function forwardCode(known: Known): WasmFunction {
  return {
    name: "forward",
    parameters: [...RANGE, "i32"],
    body: ([from, to, source], local) => {
      const [j, p, last, sourceA] = [local("i32"), local("i32"), local("i32"), local("f64")];
      const carry = addReal(
        get(source!),
        intAt(known("rowIndex"), get(p)),
        mul(realAt(known("value"), get(p)), get(sourceA)),
      );
      return forRange(j, get(from!), get(to!), [
        set(sourceA, realAt(get(source!), get(j))),
        when(
          equal(get(sourceA), real(0)),
          [],
          [
            set(last, intSub(intAt(known("columnStart"), intAdd(get(j), int(1))), int(1))),
            forRange(p, intAt(known("columnStart"), get(j)), get(last), carry),
          ],
        ),
      ]);
    },
  };
}

/** v_j = s_j / d_j + Σ w_i · v_i for columns to − 1 down to from, with the currents at `source` and the volts at `volts`. */
export function backwardCode(known: Known): WasmFunction {
  return {
    name: "backward",
    parameters: [...RANGE, "i32", "i32"],
    body: ([from, to, source, volts], local) => {
      const [j, p, last, v] = [local("i32"), local("i32"), local("i32"), local("f64")];
      const term = mul(
        realAt(known("value"), get(p)),
        realAt(get(volts!), intAt(known("rowIndex"), get(p))),
      );
      return [
        set(j, intSub(get(to!), int(1))),
        whileTrue(intAtLeast(get(j), get(from!)), [
          set(v, mul(realAt(get(source!), get(j)), realAt(known("pivotOhm"), get(j)))),
          set(last, intSub(intAt(known("columnStart"), intAdd(get(j), int(1))), int(1))),
          forRange(p, intAt(known("columnStart"), get(j)), get(last), set(v, add(get(v), term))),
          putReal(get(volts!), get(j), get(v)),
          set(j, intSub(get(j), int(1))),
        ]),
      ];
    },
  };
}

/** Σ x_j · y_j / d_j over columns from .. to − 1. */
export function weighedCode(known: Known): WasmFunction {
  return {
    name: "weighed",
    parameters: [...RANGE, "i32", "i32"],
    result: "f64",
    body: ([from, to, one, other], local) => {
      const [j, sum] = [local("i32"), local("f64")];
      const term = mul(
        mul(realAt(get(one!), get(j)), realAt(get(other!), get(j))),
        realAt(known("pivotOhm"), get(j)),
      );
      return [forRange(j, get(from!), get(to!), set(sum, add(get(sum), term))), get(sum)];
    },
  };
}

/** x_j += factor · y_j for from .. to − 1. */
export function addScaledCode(): WasmFunction {
  return {
    name: "addScaled",
    parameters: [...RANGE, "i32", "i32", "f64"],
    body: ([from, to, one, other, factor], local) => {
      const j = local("i32");
      return forRange(
        j,
        get(from!),
        get(to!),
        addReal(get(one!), get(j), mul(get(factor!), realAt(get(other!), get(j)))),
      );
    },
  };
}
