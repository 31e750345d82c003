/** What the server refused, in its own words. */
export interface ServerRefusal {
  readonly ok: false;
  readonly code: string;
  readonly message: string;
  readonly refusals?: readonly { readonly message: string; readonly remedy: string }[];
}

export type ServerAnswer<T> =
  | { readonly kind: "ok"; readonly value: T }
  | { readonly kind: "refused"; readonly status: number; readonly refusal: ServerRefusal }
  | { readonly kind: "away" };

/** One request. The server being out of reach is an answer, not an exception: the bench goes on without it. */
export async function server<T>(
  method: "GET" | "POST",
  path: string,
  body?: unknown,
): Promise<ServerAnswer<T>> {
  const headers: Record<string, string> = method === "GET" ? {} : CHANGE_HEADERS;
  let response: Response;
  try {
    response = await fetch(`/api${path}`, {
      method,
      headers,
      ...(method === "POST" ? { body: JSON.stringify(body ?? {}) } : {}),
    });
  } catch {
    return { kind: "away" };
  }
  if (response.ok) return { kind: "ok", value: (await response.json()) as T };
  // A server in trouble is asked again: what it has taken already is known by its id.
  if (response.status >= 500) return { kind: "away" };
  const refusal = (await response.json().catch(() => null)) as ServerRefusal | null;
  return {
    kind: "refused",
    status: response.status,
    refusal: refusal ?? {
      ok: false,
      code: "unreadable",
      message: `The server answered ${response.status} without saying why.`,
    },
  };
}

const CHANGE_HEADERS = { "content-type": "application/json", "x-copperwright": "1" };
