import { useEffect, useState } from "react";

const STILL = "(prefers-reduced-motion: reduce)";

/**
 * The half of its rhythm a flasher is in, at its real rate (one to two a second, under three by law of light sensitivity). Held lit where the
 * hand has stopped it and where the device asks for no motion; it ends with the screen it is on.
 */
export function useFlash(isBeating: boolean, perMinute: number): "on" | "off" {
  const [half, setHalf] = useState<"on" | "off">("on");
  useEffect(() => {
    setHalf("on");
    if (!isBeating || perMinute <= 0 || matchMedia(STILL).matches) return;
    const halfMs = 30_000 / Math.min(perMinute, MOST_PER_MINUTE);
    const timer = setInterval(() => setHalf((now) => (now === "on" ? "off" : "on")), halfMs);
    return () => clearInterval(timer);
  }, [isBeating, perMinute]);
  return half;
}

const MOST_PER_MINUTE = 170;
