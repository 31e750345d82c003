import type { BuildCard } from "@copperwright/engine/scenes";
import { type ReactNode, useEffect, useState } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { choose, noteStep, useBench } from "../../store/benchStore.ts";
import { useAwakeScreen } from "../../store/useAwakeScreen.ts";
import { BuildList } from "./BuildList.tsx";
import "./build.css";
import { type DoneMarks, doneOf, isDone } from "./buildDone.ts";
import { WireCard } from "./WireCard.tsx";

/** One wire a card, in the order of their numbers: cut, both ends, done. */
export default function BuildStep(): ReactNode {
  useAwakeScreen();
  const { answer: cards, fault } = useAnswer("buildCards", undefined);
  const build = useBench((bench) => bench.document?.job.build ?? []);
  const chosen = useBench((bench) => bench.chosen);
  const [index, setIndex] = useState<number | null>(null);
  const done = doneOf(build);
  const doneCount = cards?.filter((card) => isDone(card, done)).length ?? 0;
  const count = cards?.length ?? 0;
  useEffect(() => {
    if (cards === null) return;
    const box = doneCount === 0 ? "empty" : doneCount === count ? "ticked" : "half";
    noteStep("build", { text: `${doneCount} of ${count}`, box });
  }, [cards, doneCount, count]);
  const at = index ?? startAt(cards ?? [], done, chosen?.kind === "wire" ? chosen.id : null);
  // The card stays until the hand goes on, even when its last tick comes from another device.
  useEffect(() => {
    if (cards !== null && index === null) setIndex(at);
  }, [cards, index, at]);
  if (fault !== null) return <p role="alert">The cards could not be made: {fault}</p>;
  if (cards === null) return <p className="note waiting">making the cards</p>;
  if (count === 0) return <p className="waiting">Nothing to build: this job has no new wire.</p>;
  const go = (next: number): void => {
    const card = cards[next];
    if (card === undefined) return;
    setIndex(next);
    choose({ kind: "wire", id: card.wire });
  };
  return (
    <div className="build">
      <WireCard
        card={cards[at]!}
        done={done}
        place={`${at + 1} of ${count}`}
        onGo={(offset) => go(at + offset)}
        onNextOpen={() =>
          go(
            nextOpen(
              at,
              cards.map((card) => isDone(card, done)),
            ),
          )
        }
      />
      <BuildList cards={cards} done={done} at={at} onGo={go} />
    </div>
  );
}

/** The wire chosen elsewhere, else the first that is not done. */
function startAt(cards: readonly BuildCard[], done: DoneMarks, chosenWire: string | null): number {
  const ofChosen = cards.findIndex(({ wire }) => wire === chosenWire);
  return ofChosen >= 0
    ? ofChosen
    : Math.max(
        0,
        cards.findIndex((card) => !isDone(card, done)),
      );
}

/** The next card that is not done, from here on and round again. */
function nextOpen(at: number, isDoneList: readonly boolean[]): number {
  const count = isDoneList.length;
  for (let i = 1; i <= count; i++) {
    const next = (at + i) % count;
    if (isDoneList[next] === false) return next;
  }
  return at;
}
