import { readdir, readFile, writeFile } from "node:fs/promises";
import { join } from "node:path";
import { promisify } from "node:util";
import { brotliCompress, constants } from "node:zlib";

const PACKED = /\.(js|css|ttf)$/;
const SMALLEST_BYTE_COUNT = 1024;
const pack = promisify(brotliCompress);

/** Writes each file of a folder, packed as tightly as brotli can, beside it as NAME.br: too slow to do while a page waits for it. */
export async function packedBeside(folder: string): Promise<void> {
  const names = (await readdir(folder)).filter((name) => PACKED.test(name));
  await Promise.all(
    names.map(async (name) => {
      const bytes = await readFile(join(folder, name));
      if (bytes.length < SMALLEST_BYTE_COUNT) return;
      const params = {
        [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY,
        [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length,
      };
      await writeFile(join(folder, `${name}.br`), await pack(bytes, { params }));
    }),
  );
}
