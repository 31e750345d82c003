import { describe, expect, it } from "vitest";
import {
  add,
  forRange,
  get,
  int,
  intAdd,
  intMul,
  real,
  set,
  signedLeb,
  unsignedLeb,
} from "./wasmCode.ts";
import { callOf, wasmModule } from "./wasmModule.ts";

const { Module, Instance, Memory } = (
  globalThis as unknown as {
    WebAssembly: {
      Module: new (bytes: Uint8Array) => object;
      Instance: new (
        module: object,
        imports: object,
      ) => { exports: Record<string, (...x: number[]) => number> };
      Memory: new (size: object) => object;
    };
  }
).WebAssembly;

describe("whole numbers in the binary format", () => {
  it("as in the worked examples of DWARF 5, section 7.6 (LEB128)", () => {
    expect(unsignedLeb(624485)).toEqual([0xe5, 0x8e, 0x26]);
    expect(signedLeb(-123456)).toEqual([0xc0, 0xbb, 0x78]);
    expect(unsignedLeb(128)).toEqual([0x80, 0x01]);
    expect(signedLeb(-127)).toEqual([0x81, 0x7f]);
    expect(signedLeb(128)).toEqual([0x80, 0x01]);
  });
});

describe("wasmModule", () => {
  it("makes functions that loop, call one another, call out, and see their constants", () => {
    const call = callOf(["twice", "triangle", "both"]);
    const bytes = wasmModule({
      imports: [{ name: "twice", parameters: ["f64"], result: "f64" }],
      globals: ["offset"],
      functions: [
        {
          name: "triangle",
          parameters: ["i32"],
          result: "i32",
          body: ([to], local) => {
            const [j, sum] = [local("i32"), local("i32")];
            return [forRange(j, int(0), get(to!), set(sum, intAdd(get(sum), get(j)))), get(sum)];
          },
        },
        {
          name: "both",
          parameters: ["f64"],
          result: "f64",
          body: ([x]) => [
            add(call("twice", get(x!)), real(0.5)),
            [intMul(call("triangle", [0x23, 0]), int(1)), 0xb7],
            0xa0,
          ],
        },
      ],
    });
    const { exports } = new Instance(new Module(bytes), {
      m: { memory: new Memory({ initial: 1 }) },
      g: { offset: 5 },
      f: { twice: (x: number) => 2 * x },
    });
    expect(exports.triangle!(101)).toBe(5050);
    // 2 · 1.25 + 0.5 + (0 + 1 + 2 + 3 + 4)
    expect(exports.both!(1.25)).toBe(13);
    expect(() => call("nobody")).toThrow("No function nobody");
  });
});
