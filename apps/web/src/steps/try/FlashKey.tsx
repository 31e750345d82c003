import { printNumber } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { useTry } from "./tryStore.ts";

/** Stops the flasher's beat with one key or one tap; its lamps are then held lit. */
export function FlashKey({ isOn, perMinute }: { isOn: boolean; perMinute: number }): ReactNode {
  const isFlashing = useTry((bench) => bench.isFlashing);
  return (
    <div className="try-flash">
      <span className="note">
        flasher {isOn ? `beats ${printNumber(perMinute, 0)} a minute` : "at rest"}
      </span>
      <button
        type="button"
        className="act"
        aria-pressed={!isFlashing}
        onClick={() => useTry.setState({ isFlashing: !isFlashing })}
      >
        {isFlashing ? "hold it lit" : "let it flash"} <kbd>f</kbd>
      </button>
    </div>
  );
}
