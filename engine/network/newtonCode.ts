import type { Known } from "./meshCode.ts";
import {
  abs,
  add,
  addReal,
  atMost,
  type Code,
  copyBytes,
  div,
  forRange,
  get,
  int,
  intAdd,
  intAt,
  intEqual,
  intLess,
  intMul,
  intSub,
  type Local,
  less,
  mul,
  not,
  putReal,
  real,
  realAt,
  set,
  sub,
  when,
  whileTrue,
} from "./wasmCode.ts";
import type { WasmFunction } from "./wasmModule.ts";

/** The laws and their lines agree to this, A, summed over all branches, before Kirchhoff's law is measured in full. */
const AGREEMENT_A = 5e-10;

export type Call = (name: string, ...values: Code[]) => Code;

/**
 * Current and slope of slot s at slotV, unless it was last evaluated within `stillV` of there. Filament: i = ratedA·u·(u² + eps²)^h, u = v/ratedV,
 * h = (exponent − 1)/2, di/dv = (ratedA/ratedV)·(u² + eps²)^h·(1 + 2·h·u²/(u² + eps²)). Other laws are called out.
 */
export function evaluateCode(known: Known, call: Call): WasmFunction {
  return {
    name: "evaluate",
    parameters: ["i32", "f64"],
    body: ([s, stillV], local) => {
      const [v, u, square, sum] = [local("f64"), local("f64"), local("f64"), local("f64")];
      const [half, factor] = [local("f64"), local("f64")];
      const of = (name: string): Code => realAt(known(name), get(s!));
      const put = (name: string, value: Code): Code => putReal(known(name), get(s!), value);
      const filament: Code = [
        set(u, mul(get(v), of("perRatedV"))),
        set(square, mul(get(u), get(u))),
        set(sum, add(get(square), of("epsSquared"))),
        set(half, of("halfExponent")),
        set(factor, call("exp", mul(get(half), call("log", get(sum))))),
        put("slotA", mul(mul(of("ratedA"), get(u)), get(factor))),
        put(
          "slotS",
          mul(
            mul(of("chordS"), get(factor)),
            add(real(1), div(mul(mul(real(2), get(half)), get(square)), get(sum))),
          ),
        ),
      ];
      return [
        set(v, of("slotV")),
        when(not(atMost(abs(sub(of("slotAtV"), get(v))), get(stillV!))), [
          put("slotAtV", get(v)),
          when(intAt(known("isFilament"), get(s!)), filament, call("evaluateOther", get(s!))),
        ]),
      ];
    },
  };
}

/**
 * Plain Newton steps on the late columns, at most `most`, until laws and lines agree: solve with every slot replaced by its line,
 * move the lines. A filament whose volts changed sign is next taken at 0 V: plain steps across its steep origin swing from side
 * to side. Returns the number of steps; leaves the late volts in positionV.
 */
export function newtonCode(known: Known, call: Call): WasmFunction {
  return {
    name: "newton",
    parameters: ["i32", "i32"],
    result: "i32",
    body: ([most, shortCount], local) => {
      const [count, s, k, sumA] = [local("i32"), local("i32"), local("i32"), local("f64")];
      const range = [known("splitColumn"), known("unknownCount")];
      const more = [
        get(count),
        get(most!),
        [0x48],
        not(atMost(get(sumA), real(AGREEMENT_A))),
        [0x71],
      ];
      return [
        set(sumA, real(1)),
        whileTrue(more, [
          set(count, intAdd(get(count), int(1))),
          restoreReduced(known),
          forRange(s, int(0), known("slotCount"), [
            set(k, intAt(known("branchOfSlot"), get(s))),
            addLine(known, local, s, k),
          ]),
          call("eliminate", ...range),
          when(
            intEqual(get(shortCount!), int(1)),
            call("applyOneShort"),
            when(get(shortCount!), call("applyShorts")),
          ),
          call("backward", ...range, known("injectedA"), known("positionV")),
          set(sumA, real(0)),
          forRange(s, int(0), known("slotCount"), [
            set(k, intAt(known("branchOfSlot"), get(s))),
            moveLine(known, call, local, { s, k, sumA }),
          ]),
        ]),
        get(count),
      ];
    },
  };
}

function restoreReduced(known: Known): Code {
  const lateBytes = (count: Code): Code => intMul(count, int(8));
  const offset = (name: string, index: Code): Code => intAdd(known(name), lateBytes(index));
  const nodes = intAdd(intSub(known("unknownCount"), known("splitColumn")), int(1));
  return [
    copyBytes(
      offset("value", known("firstLate")),
      known("reducedS"),
      lateBytes(intSub(known("entryCount"), known("firstLate"))),
    ),
    copyBytes(offset("injectedA", known("splitColumn")), known("reducedA"), lateBytes(nodes)),
  ];
}

/** Conductance lineS into the mesh and current lineS · lineV − lineA into a. */
function addLine(known: Known, local: (type: "i32" | "f64") => Local, s: Local, k: Local): Code {
  const [place, g, sourceA] = [local("i32"), local("f64"), local("f64")];
  const of = (name: string): Code => realAt(known(name), get(s));
  return [
    set(place, intAt(known("entry"), get(k))),
    when(
      intLess(get(place), int(0)),
      [],
      [
        set(g, of("lineS")),
        set(sourceA, sub(mul(get(g), of("lineV")), of("lineA"))),
        addReal(known("value"), get(place), get(g)),
        addReal(known("injectedA"), intAt(known("positionA"), get(k)), get(sourceA)),
        addReal(known("injectedA"), intAt(known("positionB"), get(k)), sub(real(0), get(sourceA))),
      ],
    ),
  ];
}

function moveLine(
  known: Known,
  call: Call,
  local: (type: "i32" | "f64") => Local,
  { s, k, sumA }: { s: Local; k: Local; sumA: Local },
): Code {
  const [v, before] = [local("f64"), local("f64")];
  const of = (name: string): Code => realAt(known(name), get(s));
  const put = (name: string, value: Code): Code => putReal(known(name), get(s), value);
  const onLine = add(of("lineA"), mul(of("lineS"), sub(get(v), get(before))));
  const onLaw = add(of("slotA"), mul(of("slotS"), sub(get(v), of("slotAtV"))));
  const toLaw = [put("lineV", of("slotAtV")), put("lineA", of("slotA")), put("lineS", of("slotS"))];
  const toZero = [put("lineV", real(0)), put("lineA", real(0)), put("lineS", of("coldS"))];
  return [
    set(v, voltsAcross(known, k)),
    set(before, of("lineV")),
    put("slotV", get(v)),
    call("evaluate", get(s), of("stillV")),
    set(sumA, add(get(sumA), abs(sub(onLaw, onLine)))),
    when(
      intAt(known("isFilament"), get(s)),
      when(less(mul(get(v), get(before)), real(0)), toZero, toLaw),
      [call("limitOther", get(s)), toLaw],
    ),
  ];
}

/** v(a) − v(b) of branch k. */
export function voltsAcross(known: Known, k: Local): Code {
  return sub(
    realAt(known("positionV"), intAt(known("positionA"), get(k))),
    realAt(known("positionV"), intAt(known("positionB"), get(k))),
  );
}
