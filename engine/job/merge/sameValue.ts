/** Whether two pieces of plain data say the same. The order of fields says nothing, and a field that is undefined is absent. */
export function sameValue(a: unknown, b: unknown): boolean {
  if (Object.is(a, b)) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  if (Array.isArray(a) !== Array.isArray(b)) return false;
  if (Array.isArray(a) && Array.isArray(b)) {
    return a.length === b.length && a.every((member, i) => sameValue(member, b[i]));
  }
  const [fieldsOfA, fieldsOfB] = [a, b].map((fields) =>
    Object.entries(fields).filter(([, value]) => value !== undefined),
  ) as [[string, unknown][], [string, unknown][]];
  return (
    fieldsOfA.length === fieldsOfB.length &&
    fieldsOfA.every(
      ([key, value]) => Object.hasOwn(b, key) && sameValue(value, Reflect.get(b, key)),
    )
  );
}
