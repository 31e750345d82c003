import type { BuildCard } from "@copperwright/engine/scenes";
import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { WireSwatch } from "../../frame/WireSwatch.tsx";
import { type DoneMarks, isDone, isTicked, tick } from "./buildDone.ts";
import { EndPanel } from "./EndPanel.tsx";

type WireCardProps = {
  readonly card: BuildCard;
  readonly done: DoneMarks;
  readonly place: string;
  readonly onGo: (offset: 1 | -1) => void;
  readonly onNextOpen: () => void;
};

/** Big figures, the wire across the card, each end a panel whose whole area is its tick. */
export function WireCard({ card, done, place, onGo, onNextOpen }: WireCardProps): ReactNode {
  const isCut = isTicked(done, card.wire, "cut");
  const isAll = isDone(card, done);
  return (
    <article className="wire-card" aria-label={`Wire ${card.number}`}>
      <header className="wire-head">
        <div>
          <span className="note">wire, {place}</span>
          <p className="wire-number">{card.number}</p>
        </div>
        <button
          type="button"
          className="plain wire-cut"
          aria-pressed={isCut}
          onClick={() => tick(card.wire, "cut", `wire ${card.number} cut`)}
        >
          <span className="note">{card.isEstimated ? "cut, estimated: measure first" : "cut"}</span>
          <span className="wire-length">
            {card.cutMm === null ? "measure" : printQuantity(card.cutMm, "mm")}
          </span>
          <span className={isCut ? "cut-tick done" : "cut-tick"}>
            {isCut ? "cut" : "tap when cut"}
          </span>
        </button>
      </header>
      <div className="wire-across">
        <WireSwatch colour={card.colour} widthPx={2000} heightPx={30} />
      </div>
      <p className="wire-colour">
        <b>{card.colourWords}</b> <span>{card.colourCode}</span>
      </p>
      <p className="wire-size">
        {card.size} · {card.stranding} · {card.circuit}
      </p>
      {card.ends.map((end) => (
        <EndPanel key={end.end} end={end} card={card} done={done} />
      ))}
      <footer className="wire-foot">
        <button type="button" className="act" onClick={() => onGo(-1)} aria-label="Wire before">
          before
        </button>
        <button type="button" className={isAll ? "act filled" : "act"} onClick={onNextOpen}>
          {isAll ? "next wire to do" : "leave it, next to do"}
        </button>
        <button type="button" className="act" onClick={() => onGo(1)} aria-label="Next wire">
          next
        </button>
      </footer>
    </article>
  );
}
