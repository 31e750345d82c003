const WOFF_SIGNATURE = 0x774f4646;
const WOFF_HEADER_BYTES = 44;
const WOFF_ENTRY_BYTES = 20;
const SFNT_HEADER_BYTES = 12;
const SFNT_ENTRY_BYTES = 16;

interface FontTable {
  readonly tag: number;
  readonly checksum: number;
  readonly bytes: Uint8Array;
}

/**
 * The plain font inside a WOFF 1.0 wrapper (W3C): its tables inflated and laid out behind an sfnt directory. Bytes that are no WOFF come back
 * as they are. Done once, because the PDF library would inflate a table again for every glyph.
 */
export async function sfntFromWoff(bytes: Uint8Array): Promise<Uint8Array> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.byteLength < WOFF_HEADER_BYTES || view.getUint32(0) !== WOFF_SIGNATURE) return bytes;
  const flavour = view.getUint32(4);
  const tableCount = view.getUint16(12);
  const tables: FontTable[] = [];
  for (let i = 0; i < tableCount; i++) {
    const at = WOFF_HEADER_BYTES + i * WOFF_ENTRY_BYTES;
    const offset = view.getUint32(at + 4);
    const packedBytes = bytes.subarray(offset, offset + view.getUint32(at + 8));
    const isPacked = packedBytes.length < view.getUint32(at + 12);
    tables.push({
      tag: view.getUint32(at),
      checksum: view.getUint32(at + 16),
      bytes: isPacked ? await inflated(packedBytes) : packedBytes,
    });
  }
  return sfnt(flavour, tables);
}

async function inflated(packed: Uint8Array): Promise<Uint8Array> {
  const stream = new Blob([new Uint8Array(packed)])
    .stream()
    .pipeThrough(new DecompressionStream("deflate"));
  return new Uint8Array(await new Response(stream as unknown as ReadableStream).arrayBuffer());
}

const paddedBytes = (count: number): number => (count + 3) & ~3;

function sfnt(flavour: number, tables: readonly FontTable[]): Uint8Array {
  const headBytes = SFNT_HEADER_BYTES + tables.length * SFNT_ENTRY_BYTES;
  const all = tables.reduce((sum, table) => sum + paddedBytes(table.bytes.length), headBytes);
  const font = new Uint8Array(all);
  const view = new DataView(font.buffer);
  const power = Math.floor(Math.log2(tables.length));
  view.setUint32(0, flavour);
  view.setUint16(4, tables.length);
  view.setUint16(6, 2 ** power * SFNT_ENTRY_BYTES);
  view.setUint16(8, power);
  view.setUint16(10, (tables.length - 2 ** power) * SFNT_ENTRY_BYTES);
  let offset = headBytes;
  tables.forEach((table, i) => {
    const at = SFNT_HEADER_BYTES + i * SFNT_ENTRY_BYTES;
    view.setUint32(at, table.tag);
    view.setUint32(at + 4, table.checksum);
    view.setUint32(at + 8, offset);
    view.setUint32(at + 12, table.bytes.length);
    font.set(table.bytes, offset);
    offset += paddedBytes(table.bytes.length);
  });
  return font;
}
