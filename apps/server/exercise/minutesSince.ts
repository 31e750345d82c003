const MINUTE_MS = 60_000;

/** Minutes between a stored moment and now, to the tenth. */
export function minutesSince(startedAt: string, now: Date): number {
  const minutes = (now.getTime() - Date.parse(startedAt)) / MINUTE_MS;
  return Math.max(0, Math.round(minutes * 10) / 10);
}
