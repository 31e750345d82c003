/**
 * The value `after`, made of the objects of `before` wherever the two are equal: what did not change is then known by `===`.
 * Plain data, lists, maps, sets and arrays of numbers; anything else (a function) is equal only to itself. Members in another
 * order are another value, so that what is kept also prints as what it stands for.
 */
export const sharedWith = <T>(before: unknown, after: T): T => shared(before, after) as T;

function shared(before: unknown, after: unknown): unknown {
  if (Object.is(before, after)) return before;
  if (typeof before !== "object" || typeof after !== "object") return after;
  if (before === null || after === null) return after;
  if (Object.getPrototypeOf(before) !== Object.getPrototypeOf(after)) return after;
  if (Array.isArray(after)) return sharedList(before as readonly unknown[], after);
  if (after instanceof Map) return sharedMap(before as ReadonlyMap<unknown, unknown>, after);
  if (after instanceof Set)
    return sameMembers([...(before as Set<unknown>)], [...after]) ? before : after;
  if (ArrayBuffer.isView(after))
    return sameNumbers(before as Float64Array, after as Float64Array) ? before : after;
  return sharedFields(before as Fields, after as Fields);
}

type Fields = Readonly<Record<string, unknown>>;

/** Things with ids are compared with the thing of that id, so that one more or less in a list changes no other. */
function sharedList(before: readonly unknown[], after: readonly unknown[]): readonly unknown[] {
  let byId: ReadonlyMap<unknown, unknown> | null = null;
  const partnerOf = (item: unknown, i: number): unknown => {
    const id = idOf(item);
    if (id === undefined || idOf(before[i]) === id) return before[i];
    byId ??= new Map(before.map((one) => [idOf(one), one]));
    return byId.get(id);
  };
  const items = after.map((item, i) => shared(partnerOf(item, i), item));
  return sameMembers(before, items) ? before : items;
}

const idOf = (item: unknown): unknown =>
  typeof item === "object" && item !== null ? Reflect.get(item, "id") : undefined;

const sameMembers = (before: readonly unknown[], after: readonly unknown[]): boolean =>
  before.length === after.length && after.every((item, i) => Object.is(item, before[i]));

const sameNumbers = (before: Float64Array, after: Float64Array): boolean =>
  before.length === after.length && after.every((one, i) => Object.is(one, before[i]));

function sharedMap(
  before: ReadonlyMap<unknown, unknown>,
  after: ReadonlyMap<unknown, unknown>,
): ReadonlyMap<unknown, unknown> {
  const whole = new Map([...after].map(([key, one]) => [key, shared(before.get(key), one)]));
  const isSame =
    sameMembers([...before.keys()], [...whole.keys()]) &&
    sameMembers([...before.values()], [...whole.values()]);
  return isSame ? before : whole;
}

function sharedFields(before: Fields, after: Fields): Fields {
  const names = Object.keys(after);
  const fields = names.map((name) => shared(before[name], after[name]));
  if (
    sameMembers(Object.keys(before), names) &&
    fields.every((one, i) => Object.is(one, before[names[i]!]))
  )
    return before;
  return Object.fromEntries(names.map((name, i) => [name, fields[i]]));
}
