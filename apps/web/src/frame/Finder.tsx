import { type ReactNode, useEffect, useRef, useState } from "react";
import { choose, useBench } from "../store/benchStore.ts";
import { closeFinder, useFinder } from "./finderState.ts";
import { foundThings } from "./foundThings.ts";

const SHOWN_COUNT = 12;

/** Finds anything by number, colour or name, from any step. */
export function Finder(): ReactNode {
  const isOpen = useFinder((finder) => finder.isOpen);
  return isOpen ? <FinderSlip /> : null;
}

function FinderSlip(): ReactNode {
  const job = useBench((bench) => bench.document?.job ?? null);
  const [words, setWords] = useState("");
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.focus(), []);
  const found = job === null || words.trim() === "" ? [] : foundThings(job, words);
  const take = (at: number): void => {
    const thing = found[at];
    if (thing === undefined) return;
    choose({ kind: thing.kind, id: thing.id });
    closeFinder();
  };
  return (
    <search className="slip finder">
      <label>
        <span className="note">find by number, colour or name</span>
        <input
          ref={field}
          className="field"
          value={words}
          onChange={(event) => setWords(event.target.value)}
          onKeyDown={(event) => {
            if (event.key === "Escape") closeFinder();
            if (event.key === "Enter") take(0);
          }}
        />
      </label>
      <ul>
        {found.slice(0, SHOWN_COUNT).map((thing, i) => (
          <li key={`${thing.kind} ${thing.id}`}>
            <button type="button" className="plain finder-row" onClick={() => take(i)}>
              <b>{thing.label}</b> <span className="note">{thing.note}</span>
            </button>
          </li>
        ))}
      </ul>
      {words.trim() !== "" && found.length === 0 && <p className="note">nothing of that name</p>}
      <button type="button" className="act small" onClick={closeFinder}>
        close
      </button>
    </search>
  );
}
