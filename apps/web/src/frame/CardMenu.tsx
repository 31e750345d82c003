import type { ReactNode } from "react";
import { useBench } from "../store/benchStore.ts";
import { openFinder } from "./finderState.ts";
import { openKeys } from "./keysState.ts";
import { choosePalette, PALETTES } from "./usePalette.ts";

/** The few things that belong to the whole bench: find anything, the keys, and the light to read it in. */
export function CardMenu({ close }: { close: () => void }): ReactNode {
  // On a phone the opened card lies over the sheet; what is opened from it lies there.
  const open = (what: () => void) => () => {
    close();
    what();
  };
  const palette = useBench((bench) => bench.palette);
  const hasJob = useBench((bench) => bench.document !== null);
  const why = useBench((bench) => bench.visitor?.whyLimited ?? null);
  return (
    <div className="card-menu">
      {hasJob && (
        <button type="button" className="act small" onClick={open(openFinder)}>
          find
        </button>
      )}
      <button type="button" className="act small" onClick={open(openKeys)}>
        keys
      </button>
      <label className="light">
        <span className="note">light</span>
        <select
          value={palette}
          onChange={(event) => choosePalette(event.target.value as (typeof PALETTES)[number])}
        >
          {PALETTES.map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
        </select>
      </label>
      {why !== null && <p className="note">{why}</p>}
    </div>
  );
}
