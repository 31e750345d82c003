import { useEffect } from "react";

/** Keeps the screen from going dark while hands are busy, where the device allows it. */
export function useAwakeScreen(): void {
  useEffect(() => {
    let lock: WakeLockSentinel | null = null;
    const ask = (): void => {
      if (document.visibilityState !== "visible" || !("wakeLock" in navigator)) return;
      void navigator.wakeLock.request("screen").then(
        (got) => {
          lock = got;
        },
        () => undefined,
      );
    };
    ask();
    document.addEventListener("visibilitychange", ask);
    return () => {
      document.removeEventListener("visibilitychange", ask);
      void lock?.release();
    };
  }, []);
}
