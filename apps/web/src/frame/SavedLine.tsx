import type { ReactNode } from "react";
import { useWaitingPhotographs } from "../server/photographSending.ts";
import { useBench } from "../store/benchStore.ts";

/** Where the last change is: on the server, on this device only, or in two versions. */
export function SavedLine(): ReactNode {
  const { mark, at } = useBench((bench) => bench.saved);
  const waiting = useBench((bench) => bench.document?.pending.length ?? 0);
  const key = useBench((bench) => bench.document?.key);
  const photographCount = useWaitingPhotographs(
    (state) => Object.values(state.waiting).filter((one) => one.key === key).length,
  );
  const words: Readonly<Record<typeof mark, string>> = {
    saved: at === null ? "saved" : `saved ${clock(at)}`,
    keeping: "being kept",
    waiting: "waiting, kept on this device",
    offline: waiting > 0 ? `offline, ${waiting} kept on this device` : "offline, all is kept here",
    "two-versions": "saved, with two versions",
  };
  // Nothing is called saved while a photograph is on this device alone.
  const isAllSaved = mark === "saved" && photographCount === 0;
  const box = isAllSaved ? "full" : mark === "two-versions" ? "half" : "empty";
  return (
    <p
      className="note saved"
      data-mark={mark === "saved" && !isAllSaved ? "waiting" : mark}
      role="status"
    >
      <span className={`saved-box ${box}`} aria-hidden="true" /> {words[mark]}
      {photographCount > 0 &&
        `, ${photographCount} ${photographCount === 1 ? "photograph" : "photographs"} only here`}
    </p>
  );
}

const clock = (at: string): string =>
  new Date(at).toLocaleTimeString([], { hour: "2-digit", minute: "2-digit" });
