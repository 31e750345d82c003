import { type Code, type Local, unsignedLeb, type ValueType } from "./wasmCode.ts";

export interface WasmImport {
  readonly name: string;
  readonly parameters: readonly ValueType[];
  readonly result?: ValueType;
}

export interface WasmFunction extends WasmImport {
  /** Writes the body, given the parameters and a way to declare further locals. */
  readonly body: (parameters: readonly Local[], local: (type: ValueType) => Local) => Code;
}

/** What a module may refer to while its bodies are written. */
export interface WasmPlan {
  readonly imports: readonly WasmImport[];
  /** Constant whole numbers given when the module is set to work. */
  readonly globals: readonly string[];
  readonly functions: readonly WasmFunction[];
}

/** Names of the two parts every import is given under. */
export const FUNCTIONS = "f";
export const GLOBALS = "g";

const TYPE_BYTE = { i32: 0x7f, f64: 0x7c } as const;

/** Bytes of a module with one imported memory, the imports and globals of the plan, and every function exported by its name. */
export function wasmModule(plan: WasmPlan): Uint8Array<ArrayBuffer> {
  const all = [...plan.imports, ...plan.functions];
  const types = all.map(({ parameters, result }) => [
    0x60,
    ...vector(parameters.map((type) => [TYPE_BYTE[type]])),
    ...vector(result === undefined ? [] : [[TYPE_BYTE[result]]]),
  ]);
  const imports = [
    [...text("m"), ...text("memory"), 0x02, 0x00, 0x01],
    ...plan.globals.map((name) => [...text(GLOBALS), ...text(name), 0x03, TYPE_BYTE.i32, 0x00]),
    ...plan.imports.map(({ name }, k) => [
      ...text(FUNCTIONS),
      ...text(name),
      0x00,
      ...unsignedLeb(k),
    ]),
  ];
  const first = plan.imports.length;
  return new Uint8Array([
    ...[0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00],
    ...section(1, types),
    ...section(2, imports),
    ...section(
      3,
      plan.functions.map((_, k) => unsignedLeb(first + k)),
    ),
    ...section(
      7,
      plan.functions.map(({ name }, k) => [...text(name), 0x00, ...unsignedLeb(first + k)]),
    ),
    ...section(10, plan.functions.map(functionBytes)),
  ]);
}

/** The call of an import or function of the plan, by name. */
export function callOf(names: readonly string[]): (name: string, ...values: Code[]) => Code {
  return (name, ...values) => {
    const index = names.indexOf(name);
    if (index < 0) throw new Error(`No function ${name}`);
    return [values, 0x10, ...unsignedLeb(index)];
  };
}

function functionBytes({ parameters, body }: WasmFunction): number[] {
  const locals: ValueType[] = [];
  const given = parameters.map((type, index): Local => ({ index, type }));
  const code = body(given, (type) => {
    locals.push(type);
    return { index: parameters.length + locals.length - 1, type };
  });
  const bytes = [...vector(locals.map((type) => [1, TYPE_BYTE[type]])), ...flatten(code), 0x0b];
  return [...unsignedLeb(bytes.length), ...bytes];
}

function flatten(code: Code): number[] {
  return code.flatMap((item) => (typeof item === "number" ? [item] : flatten(item)));
}

function vector(items: readonly (readonly number[])[]): number[] {
  return [...unsignedLeb(items.length), ...items.flat()];
}

function section(id: number, items: readonly (readonly number[])[]): number[] {
  const content = vector(items);
  return [id, ...unsignedLeb(content.length), ...content];
}

function text(words: string): number[] {
  return vector([...words].map((letter) => [letter.charCodeAt(0)]));
}
