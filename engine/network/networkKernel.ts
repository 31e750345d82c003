import {
  COUNTS,
  type Counts,
  type KernelArrays,
  kernelMemory,
  REAL_ARRAYS,
  type RealName,
  WHOLE_ARRAYS,
  type WholeName,
} from "./kernelMemory.ts";
import { evaluateAllCode, largestLeftoverCode, measureCode, reduceCode } from "./kirchhoffCode.ts";
import {
  addScaledCode,
  backwardCode,
  eliminateCode,
  forwardCode,
  weighedCode,
} from "./meshCode.ts";
import { evaluateCode, newtonCode } from "./newtonCode.ts";
import { applyOneShortCode, startOneShortCode } from "./oneShortCode.ts";
import { unsignedLeb } from "./wasmCode.ts";
import { callOf, FUNCTIONS, GLOBALS, wasmModule } from "./wasmModule.ts";

/** What the loops ask of the outside: laws other than the filament's, and shorts between elimination and volts. */
export interface KernelCalls {
  evaluateOther(slot: number): void;
  limitOther(slot: number): void;
  applyShorts(): void;
}

/** The number loops of one network; their equations stand beside their code. Arrays are named by their first byte. */
export interface KernelFunctions {
  eliminate(from: number, to: number): void;
  forward(from: number, to: number, source: number): void;
  backward(from: number, to: number, source: number, volts: number): void;
  weighed(from: number, to: number, one: number, other: number): number;
  addScaled(from: number, to: number, one: number, other: number, factor: number): void;
  startOneShort(placeA: number, placeB: number, ohm: number): void;
  evaluateAll(): void;
  newton(most: number, shortCount: number): number;
  reduce(leakS: number): void;
  measure(leakS: number): number;
  largestLeftover(): number;
}

export interface NetworkKernel {
  readonly arrays: KernelArrays;
  readonly addresses: Readonly<Record<RealName | WholeName, number>>;
  readonly run: KernelFunctions;
}

/** The part of the engine's WebAssembly interface used here; the standard library of the compiler does not describe it. */
interface Assembly {
  readonly Module: new (bytes: Uint8Array<ArrayBuffer>) => object;
  readonly Instance: new (module: object, imports: object) => { readonly exports: object };
  readonly Memory: new (size: { initial: number }) => { readonly buffer: ArrayBuffer };
}

const assembly = (globalThis as unknown as { WebAssembly: Assembly }).WebAssembly;

const GLOBAL_NAMES = [...REAL_ARRAYS, ...WHOLE_ARRAYS, ...COUNTS];
const NO_VALUE = ["evaluateOther", "limitOther"].map((name) => ({
  name,
  parameters: ["i32"] as const,
}));
const IMPORTS = [
  { name: "exp", parameters: ["f64"] as const, result: "f64" as const },
  { name: "log", parameters: ["f64"] as const, result: "f64" as const },
  ...NO_VALUE,
  { name: "applyShorts", parameters: [] },
];

/** The same code for every network: sizes and places are given when it is set to work. */
const MODULE = new assembly.Module(moduleBytes());

function moduleBytes(): Uint8Array<ArrayBuffer> {
  const known = (name: string) => {
    const index = (GLOBAL_NAMES as string[]).indexOf(name);
    if (index < 0) throw new Error(`No array or count ${name}`);
    return [0x23, ...unsignedLeb(index)];
  };
  const order = [
    ...[
      "eliminate",
      "forward",
      "backward",
      "weighed",
      "addScaled",
      "startOneShort",
      "applyOneShort",
      "evaluate",
    ],
    ...["evaluateAll", "newton", "reduce", "measure", "largestLeftover"],
  ];
  const call = callOf([...IMPORTS.map(({ name }) => name), ...order]);
  const functions = [
    eliminateCode(known),
    forwardCode(known),
    backwardCode(known),
    weighedCode(known),
    addScaledCode(),
    startOneShortCode(known, call),
    applyOneShortCode(known, call),
    evaluateCode(known, call),
    evaluateAllCode(known, call),
    newtonCode(known, call),
    reduceCode(known, call),
    measureCode(known, call),
    largestLeftoverCode(known),
  ];
  return wasmModule({ imports: IMPORTS, globals: GLOBAL_NAMES, functions });
}

/** Sets the loops to work on fresh memory for one network. */
export function networkKernel(
  counts: Counts,
  whole: Readonly<Record<WholeName, Int32Array>>,
  calls: KernelCalls,
): NetworkKernel {
  const made = kernelMemory(counts, whole, (initial) => new assembly.Memory({ initial }));
  const imports = {
    m: { memory: made.memory },
    [GLOBALS]: { ...made.addresses, ...counts },
    [FUNCTIONS]: {
      exp: Math.exp,
      log: Math.log,
      evaluateOther: calls.evaluateOther,
      limitOther: calls.limitOther,
      applyShorts: calls.applyShorts,
    },
  };
  const instance = new assembly.Instance(MODULE, imports);
  const run = instance.exports as KernelFunctions;
  return { arrays: made.arrays, addresses: made.addresses, run };
}
