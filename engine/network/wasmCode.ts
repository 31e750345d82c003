/**
 * Just enough of a WebAssembly assembler to write number loops: JavaScript engines check and reload an array at every access, which
 * costs these loops three quarters of their speed. Codes: WebAssembly core specification 1.0, section 5.4 (binary format,
 * instructions); bulk memory from release 2.0.
 */

/** Instructions in order; nested lists are flattened when the module is written. */
export type Code = readonly (number | Code)[];

export type ValueType = "i32" | "f64";

/** A local variable or parameter. */
export interface Local {
  readonly index: number;
  readonly type: ValueType;
}

const LOCAL_GET = 0x20;
const LOCAL_SET = 0x21;
const I32_CONST = 0x41;
const F64_CONST = 0x44;

/** Signed LEB128, as the binary format writes whole numbers. */
export function signedLeb(value: number): number[] {
  const bytes: number[] = [];
  let rest = value | 0;
  for (;;) {
    const low = rest & 0x7f;
    rest >>= 7;
    const done = (rest === 0 && (low & 0x40) === 0) || (rest === -1 && (low & 0x40) !== 0);
    bytes.push(done ? low : low | 0x80);
    if (done) return bytes;
  }
}

export const get = (local: Local): Code => [LOCAL_GET, ...unsignedLeb(local.index)];
export const set = (local: Local, value: Code): Code => [
  value,
  LOCAL_SET,
  ...unsignedLeb(local.index),
];
export const int = (value: number): Code => [I32_CONST, ...signedLeb(value)];
export const real = (value: number): Code => {
  return [F64_CONST, ...new Uint8Array(new Float64Array([value]).buffer)];
};

/** Unsigned LEB128. */
export function unsignedLeb(value: number): number[] {
  const bytes: number[] = [];
  let rest = value >>> 0;
  do {
    const low = rest & 0x7f;
    rest >>>= 7;
    bytes.push(rest === 0 ? low : low | 0x80);
  } while (rest !== 0);
  return bytes;
}

type Binary = (one: Code, other: Code) => Code;
const binary =
  (opcode: number): Binary =>
  (one, other) => [one, other, opcode];

export const intAdd = binary(0x6a);
export const intSub = binary(0x6b);
export const intMul = binary(0x6c);
export const intEqual = binary(0x46);
export const intNotEqual = binary(0x47);
export const intLess = binary(0x48);
export const intAtLeast = binary(0x4e);
export const add = binary(0xa0);
export const sub = binary(0xa1);
export const mul = binary(0xa2);
export const div = binary(0xa3);
export const equal = binary(0x61);
export const less = binary(0x63);
export const greater = binary(0x64);
export const atMost = binary(0x65);
export const abs = (one: Code): Code => [one, 0x99];
export const not = (one: Code): Code => [one, 0x45];

const scaled = (base: Code, index: Code, shift: number): Code => [
  base,
  index,
  int(shift),
  0x74,
  0x6a,
];

/** Element `index` of the f64 (i32) array whose first byte is at `base`. */
export const realAt = (base: Code, index: Code): Code => [scaled(base, index, 3), 0x2b, 3, 0];
export const intAt = (base: Code, index: Code): Code => [scaled(base, index, 2), 0x28, 2, 0];
export const putReal = (base: Code, index: Code, value: Code): Code => [
  scaled(base, index, 3),
  value,
  0x39,
  3,
  0,
];
/** array[index] += value */
export const addReal = (base: Code, index: Code, value: Code): Code =>
  putReal(base, index, add(realAt(base, index), value));

/** if (condition) then; else otherwise. */
export const when = (condition: Code, then: Code, otherwise: Code = []): Code => [
  condition,
  0x04,
  0x40,
  then,
  otherwise.length > 0 ? [0x05, otherwise] : [],
  0x0b,
];

/** while (condition) body. */
export const whileTrue = (condition: Code, body: Code): Code => [
  [0x02, 0x40, 0x03, 0x40],
  [not(condition), 0x0d, 1],
  body,
  [0x0c, 0, 0x0b, 0x0b],
];

/** for (local = from; local < to; local++) body. */
export const forRange = (local: Local, from: Code, to: Code, body: Code): Code => [
  set(local, from),
  whileTrue(intLess(get(local), to), [body, set(local, intAdd(get(local), int(1)))]),
];

/** Leaves the function with this value. */
export const leave = (value: Code): Code => [value, 0x0f];

/** Copies `byteCount` bytes; fills with zero. */
export const copyBytes = (to: Code, from: Code, byteCount: Code): Code => [
  to,
  from,
  byteCount,
  [0xfc, 0x0a, 0, 0],
];
export const zeroBytes = (at: Code, byteCount: Code): Code => [
  at,
  int(0),
  byteCount,
  [0xfc, 0x0b, 0],
];
