import type { Job, Terms } from "@copperwright/engine";

/** When a ready circuit's live is there, and with it its loads are to work, in one sentence. */
export function liveWords({ parts }: Job, live: Terms | null): string {
  if (live === null) {
    return "When that live is there cannot be told from the wiring: nothing is said of when its loads are to work.";
  }
  if (live.length === 0) {
    return "No battery reaches that live in any position of the switches: the check will find its loads dead.";
  }
  const ways = live.map(({ positions, flash }) =>
    [
      ...Object.entries(positions).map(([id, allowed]) => {
        const part = parts.find((one) => one.id === id);
        const nameOf = (position: string): string =>
          (part?.kind === "switch" && part.positions.find((one) => one.id === position)?.name) ||
          position;
        return `${part?.name || id} at ${allowed.map(nameOf).join(" or ")}`;
      }),
      ...(flash === undefined ? [] : ["the flasher closed"]),
    ].join(" and "),
  );
  return ways.some((way) => way === "")
    ? "That live is always there: its loads are to work as its own switches say."
    : `Its loads are to work as its own switches say, with ${ways.join("; or ")}.`;
}
