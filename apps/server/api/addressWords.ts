import { keySchema } from "./requestSchemas.ts";

/** A key in a path, if it can be one. */
export function readKey(word: string): string | null {
  return keySchema.safeParse(word).success ? word : null;
}

/** A count or a cursor in an address: figures only, small enough for the database's whole numbers. */
export function readCursor(word: string | undefined): number | null {
  if (word === undefined || !/^\d{1,10}$/.test(word)) return null;
  const value = Number(word);
  return value <= 2_147_483_647 ? value : null;
}
