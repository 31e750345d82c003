import type { ReactNode } from "react";
import { choose, useBench } from "../../store/benchStore.ts";
import { takePin, useConnecting } from "./connecting.ts";

/** Terminals of a thing with the wires on each; each can be the one or the other end of a new wire. */
export function PinList({
  pins,
}: {
  pins: readonly { readonly ref: string; readonly word: string }[];
}): ReactNode {
  const wires = useBench((bench) => bench.document!.job.wires);
  const from = useConnecting((connecting) => connecting.from);
  return (
    <ul className="pin-list" aria-label="Terminals">
      {pins.map(({ ref, word }) => {
        const own = wires.filter((wire) => wire.from === ref || wire.to === ref);
        return (
          <li key={ref}>
            <b>{word}</b>
            <span className="pin-wires">
              {own.map(({ id, number }) => (
                <button
                  key={id}
                  type="button"
                  className="figure-link"
                  onClick={() => choose({ kind: "wire", id })}
                >
                  {number ?? id}
                </button>
              ))}
              {own.length === 0 && <span className="note">nothing on it</span>}
            </span>
            <button
              type="button"
              className="act small"
              disabled={from === ref}
              aria-label={`${from === null ? "connect from" : "connect to"} ${ref}`}
              onClick={() => takePin(ref)}
            >
              {from === null ? "from here" : from === ref ? "taken" : "to here"}
            </button>
          </li>
        );
      })}
    </ul>
  );
}
