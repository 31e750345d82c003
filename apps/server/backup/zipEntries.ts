import { inflateRawSync } from "node:zlib";

/** What an archive's own list says of one entry. Names are passed over: nothing here can lead to a file. */
export interface ZipEntry {
  readonly method: number;
  readonly packedBytes: number;
  readonly bytes: number;
  readonly at: number;
}

const END_MARK = 0x06054b50;
const ENTRY_MARK = 0x02014b50;
const LOCAL_MARK = 0x04034b50;
const END_BYTES = 22;
const ENTRY_BYTES = 46;
const LOCAL_BYTES = 30;
const LONGEST_REMARK = 65_535;
const STORED = 0;
const DEFLATED = 8;

/**
 * The list at the end of a zip archive; null where there is none or it does not fit the archive. Archives beyond four gigabytes are not read.
 * Source: PKWARE APPNOTE 6.3, sections 4.3.7, 4.3.12 and 4.3.16.
 */
export function zipEntries(archive: Uint8Array): readonly ZipEntry[] | null {
  const view = new DataView(archive.buffer, archive.byteOffset, archive.byteLength);
  const end = endRecord(view);
  if (end === null) return null;
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  const entries: ZipEntry[] = [];
  for (let i = 0; i < count; i++) {
    if (at + ENTRY_BYTES > end || view.getUint32(at, true) !== ENTRY_MARK) return null;
    entries.push({
      method: view.getUint16(at + 10, true),
      packedBytes: view.getUint32(at + 20, true),
      bytes: view.getUint32(at + 24, true),
      at: view.getUint32(at + 42, true),
    });
    const lengths = [28, 30, 32].map((place) => view.getUint16(at + place, true));
    at += ENTRY_BYTES + lengths.reduce((sum, length) => sum + length, 0);
  }
  return entries;
}

function endRecord(view: DataView): number | null {
  const earliest = Math.max(0, view.byteLength - END_BYTES - LONGEST_REMARK);
  for (let at = view.byteLength - END_BYTES; at >= earliest; at--) {
    if (view.getUint32(at, true) === END_MARK) return at;
  }
  return null;
}

/** What one entry holds; null where it is not there or does not unpack to exactly the size the list gave. It can grow no larger. */
export function unzipEntry(archive: Uint8Array, entry: ZipEntry): Uint8Array | null {
  const { at, packedBytes, bytes, method } = entry;
  const view = new DataView(archive.buffer, archive.byteOffset, archive.byteLength);
  if (at + LOCAL_BYTES > archive.length || view.getUint32(at, true) !== LOCAL_MARK) return null;
  const lengths = [26, 28].map((place) => view.getUint16(at + place, true));
  const from = at + LOCAL_BYTES + lengths[0]! + lengths[1]!;
  if (from + packedBytes > archive.length) return null;
  const packed = archive.subarray(from, from + packedBytes);
  if (method === STORED) return packedBytes === bytes ? packed : null;
  if (method !== DEFLATED) return null;
  try {
    const unpacked = inflateRawSync(packed, { maxOutputLength: Math.max(bytes, 1) });
    return unpacked.length === bytes ? unpacked : null;
  } catch {
    return null;
  }
}
