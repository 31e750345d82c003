/** Bytes of a base64 text; null where anything else stands in it. Node's own decoder passes over what it does not know. */
export function base64Bytes(text: string): Uint8Array | null {
  if (text.length % 4 !== 0 || !/^[A-Za-z0-9+/]*={0,2}$/.test(text)) return null;
  return Buffer.from(text, "base64");
}
