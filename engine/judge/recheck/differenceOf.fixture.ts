/** What a solve overwrites, the code of a network and the solutions kept: nothing a check says of the job. */
const WORKSPACE = new Set(["compiledNetwork", "kept"]);
/** What two solves of one state may differ by, of the larger of 1 (V, A and so on) and the number itself. */
const SOLVED_ALIKE_RATIO = 1e-9;

/** Where two values first differ, as a path; null where they do not. Numbers may differ as two solves do. Functions are not compared. */
export function differenceOf(one: unknown, other: unknown, path = ""): string | null {
  if (Object.is(one, other)) return null;
  if (typeof one === "number" && typeof other === "number") {
    const isAlike = Math.abs(one - other) <= SOLVED_ALIKE_RATIO * Math.max(1, Math.abs(one));
    return isAlike ? null : `${path}: ${one}, ${other}`;
  }
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
