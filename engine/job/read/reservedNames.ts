/** Names every object of the language answers to; as an id or a key they would be found where nobody put them. */
const RESERVED: ReadonlySet<string> = new Set([
  "__proto__",
  "prototype",
  ...Object.getOwnPropertyNames(Object.prototype),
]);

export const isReservedName = (name: string): boolean => RESERVED.has(name);
