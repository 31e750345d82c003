/** What a solve overwrites, and the code of a network: nothing a check says of the job. */
const WORKSPACE = new Set(["compiledNetwork"]);

/** Where two values first differ, as a path; null where they do not. Functions are not compared. */
export function differenceOf(one: unknown, other: unknown, path = ""): string | null {
  if (Object.is(one, other)) return null;
  if (typeof one === "function" && typeof other === "function") return null;
  if (typeof one !== "object" || typeof other !== "object") return path;
  if (one === null || other === null) return path;
  if (Object.getPrototypeOf(one) !== Object.getPrototypeOf(other)) return path;
  const [left, right] = [entriesOf(one), entriesOf(other)];
  if (left.length !== right.length) return `${path}: ${left.length} members, ${right.length}`;
  for (const [i, [name, value]] of left.entries()) {
    const [otherName, otherValue] = right[i]!;
    if (typeof name !== typeof otherName || (typeof name !== "object" && name !== otherName)) {
      return `${path}/${name} or ${otherName}`;
    }
    if (WORKSPACE.has(String(name))) continue;
    const found = differenceOf(value, otherValue, `${path}/${nameOf(name)}`);
    if (found !== null) return found;
  }
  return null;
}

const nameOf = (name: unknown): string => (typeof name === "function" ? name.name : String(name));

function entriesOf(value: object): readonly (readonly [unknown, unknown])[] {
  if (value instanceof Map) return [...value];
  if (value instanceof Set) return [...value].map((one, i) => [i, one]);
  if (ArrayBuffer.isView(value)) return [...(value as Float64Array)].map((one, i) => [i, one]);
  return Object.entries(value);
}
