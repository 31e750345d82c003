const HTTP_PORT = 80;
const HTTPS_PORT = 443;

/** Names this machine's own door answers to. */
export const OWN_NAMES: readonly string[] = ["127.0.0.1", "localhost", "[::1]"];

/**
 * The Host headers a door takes, exactly: each name with the port. A browser leaves out the port that belongs to the scheme, so there the
 * bare name is on the list too. Anything else is a page that made its own name point here.
 */
export function hostList(
  names: readonly string[],
  port: number,
  isSecure: boolean,
): ReadonlySet<string> {
  const isUsual = port === (isSecure ? HTTPS_PORT : HTTP_PORT);
  return new Set(
    names
      .map((name) => name.toLowerCase())
      .flatMap((name) => (isUsual ? [name, `${name}:${port}`] : [`${name}:${port}`])),
  );
}
