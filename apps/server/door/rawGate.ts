import type { IncomingMessage } from "node:http";
import type { RefusalCode } from "./sentences.ts";

const METHODS = new Set(["GET", "HEAD", "POST"]);

/** Header values as they came, not as they were put together. */
function valuesOf({ rawHeaders }: IncomingMessage, name: string): readonly string[] {
  return rawHeaders.filter((_, i) => i % 2 === 1 && rawHeaders[i - 1]!.toLowerCase() === name);
}

/**
 * What is refused before anything else reads the request.
 *
 * @returns null for a request that may go on
 */
export function rawRefusal(
  request: IncomingMessage,
  hosts: ReadonlySet<string>,
): RefusalCode | null {
  const [host, ...more] = valuesOf(request, "host");
  if (host === undefined || more.length > 0 || !hosts.has(host.toLowerCase())) return "wrong-host";
  // A whole address in the place of the path would name a second host.
  if (!request.url?.startsWith("/") || request.url.startsWith("//")) return "wrong-target";
  if (!METHODS.has(request.method ?? "")) return "wrong-method";
  return null;
}
