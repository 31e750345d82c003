import { isSealed, newSecret, sealOf } from "./secretSeal.ts";

/** How long the address handed to a browser program works, ms: other users of the machine may see a program's arguments. */
const LAUNCH_MS = 60_000;
const MOST_SESSIONS = 64;

/** Sessions of this machine, from the token of this start. Nothing of them outlives the process. */
export interface OwnSessions {
  /** Good until the bench closes; for the address that is printed. */
  readonly token: string;
  /** Good once, for a minute; for the address that is handed to a browser program. */
  launchToken(): string;
  /** A new session's secret; null where the token is not the one. */
  trade(token: string): string | null;
  isOpen(secret: string): boolean;
}

export function ownSessions(clock: () => Date): OwnSessions {
  const token = newSecret();
  const tokenSeal = sealOf(token);
  const launches = new Map<string, number>();
  const open = new Set<string>();

  const isLaunch = (given: string): boolean => {
    const seal = sealOf(given);
    const endsAtMs = launches.get(seal);
    launches.delete(seal);
    return endsAtMs !== undefined && clock().getTime() < endsAtMs;
  };
  return {
    token,
    launchToken: () => {
      const launch = newSecret();
      launches.set(sealOf(launch), clock().getTime() + LAUNCH_MS);
      return launch;
    },
    trade: (given) => {
      if (!isSealed(given, tokenSeal) && !isLaunch(given)) return null;
      const secret = newSecret();
      open.add(sealOf(secret));
      const [oldest] = open;
      if (open.size > MOST_SESSIONS && oldest !== undefined) open.delete(oldest);
      return secret;
    },
    // Looked up by its seal: how long that takes says nothing about the secret.
    isOpen: (secret) => open.has(sealOf(secret)),
  };
}
