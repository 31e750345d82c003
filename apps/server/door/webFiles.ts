import { createHash } from "node:crypto";
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { extname, join } from "node:path";
import { promisify } from "node:util";
import { gzip } from "node:zlib";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".json": "application/json",
  ".webmanifest": "application/manifest+json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".ico": "image/x-icon",
  ".woff": "font/woff",
  ".woff2": "font/woff2",
  ".ttf": "font/ttf",
  ".wasm": "application/wasm",
};
const PACKED = /^(text\/|application\/(json|manifest|wasm)|image\/svg|font\/ttf)/;
const SMALLEST_PACKED = 1024;
/** A name with a mark made from its content never holds anything else. */
const HASHED = /^\/assets\/.+-[A-Za-z0-9_-]{8,}\.[a-z0-9]+$/;
const FOR_EVER = "public, max-age=31536000, immutable";
const ASK_AGAIN = "no-cache";

const pack = promisify(gzip);

interface WebFile {
  readonly path: string;
  readonly type: string;
  /** The same content packed with brotli when the app was built, or null. */
  readonly brotliPath: string | null;
  packed?: Promise<Uint8Array<ArrayBuffer>>;
}

/** The web app's files. */
export interface WebFiles {
  readonly isBuilt: boolean;
  /** The answer for a path, or null where there is no such file. */
  answer(path: string, request: WebRequest): Promise<Response | null>;
}

interface WebRequest {
  /** Of the header `accept-encoding`. */
  readonly accepted: string;
  readonly ifNoneMatch: string | undefined;
}

/**
 * The files below a folder, listed once: what is not in the list is not served, so no path can climb out. Links are left out.
 */
export function webFiles(folder: string): WebFiles {
  const files = new Map<string, WebFile>();
  const walk = (below: string): void => {
    for (const entry of readdirSync(join(folder, below), { withFileTypes: true })) {
      const path = `${below}/${entry.name}`;
      if (entry.isDirectory()) walk(path);
      else if (entry.isFile()) {
        const type = TYPES[extname(entry.name)];
        if (type !== undefined) files.set(path, webFile(folder, path, type));
      }
    }
  };
  if (existsSync(folder)) walk("");
  return {
    isBuilt: files.has("/index.html"),
    answer: async (path, request) => {
      const file = files.get(path);
      return file === undefined ? null : answerOf(path, file, request);
    },
  };
}

function webFile(folder: string, path: string, type: string): WebFile {
  const whole = join(folder, path);
  // Beside a name that keeps its name when its content changes it could be of another content.
  const isPacked = HASHED.test(path) && existsSync(`${whole}.br`);
  return { path: whole, type, brotliPath: isPacked ? `${whole}.br` : null };
}

async function answerOf(
  path: string,
  file: WebFile,
  { accepted, ifNoneMatch }: WebRequest,
): Promise<Response> {
  const bytes = readFileSync(file.path);
  const isHashed = HASHED.test(path);
  const tag = `"${createHash("sha256").update(bytes).digest("base64url").slice(0, 27)}"`;
  const headers: Record<string, string> = {
    "content-type": file.type,
    "cache-control": isHashed ? FOR_EVER : ASK_AGAIN,
    etag: tag,
    vary: "accept-encoding",
  };
  if (ifNoneMatch === tag) return new Response(null, { status: 304, headers });
  if (file.brotliPath !== null && /\bbr\b/.test(accepted)) {
    const packed = readFileSync(file.brotliPath);
    return new Response(packed, { headers: { ...headers, "content-encoding": "br" } });
  }
  const isPacked = bytes.length >= SMALLEST_PACKED && PACKED.test(file.type);
  if (!isPacked || !/\bgzip\b/.test(accepted)) return new Response(bytes, { headers });
  // Packed once where the content cannot change, else each time.
  const packed = file.packed ?? pack(bytes).then((made) => new Uint8Array(made));
  if (isHashed) file.packed = packed;
  return new Response(await packed, { headers: { ...headers, "content-encoding": "gzip" } });
}
