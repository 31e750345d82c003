import type { BuildCard } from "@copperwright/engine/scenes";
import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { Tick } from "../../frame/marks.tsx";
import { WireSwatch } from "../../frame/WireSwatch.tsx";
import { type DoneMarks, isDone } from "./buildDone.ts";

/** Every wire to build, with what is done; beside the card where there is room, under it on a phone. */
export function BuildList({
  cards,
  done,
  at,
  onGo,
}: {
  cards: readonly BuildCard[];
  done: DoneMarks;
  at: number;
  onGo: (index: number) => void;
}): ReactNode {
  return (
    <nav className="build-list" aria-label="Wires to build">
      <h2>Wires</h2>
      <ol>
        {cards.map((card, i) => (
          <li key={card.wire}>
            <button
              type="button"
              className={i === at ? "plain build-row now" : "plain build-row"}
              aria-current={i === at}
              onClick={() => onGo(i)}
            >
              <b>{card.number}</b>
              <WireSwatch colour={card.colour} widthPx={56} heightPx={12} />
              <span className="note">
                {card.cutMm === null ? "measure" : printQuantity(card.cutMm, "mm")}
              </span>
              <span className="box" aria-hidden="true">
                {isDone(card, done) && <Tick />}
              </span>
              <span className="only-spoken">{isDone(card, done) ? "done" : "to do"}</span>
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}
