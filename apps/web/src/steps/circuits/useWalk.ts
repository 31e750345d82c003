import { type KeyboardEvent, useRef } from "react";
import { ask } from "../../engine/engineClient.ts";
import { choose, useBench } from "../../store/benchStore.ts";
import { wayOn } from "./wayOn.ts";

const KEYS: Readonly<Record<string, "feed" | "return" | "before" | "after">> = {
  ArrowUp: "feed",
  ArrowDown: "return",
  ArrowLeft: "before",
  ArrowRight: "after",
};

/** Arrows go along the current to the next thing once something is chosen: up towards the feed, down towards the return, sideways to what lies beside. */
export function useWalk(): (event: KeyboardEvent) => void {
  const came = useRef<string | null>(null);
  return (event) => {
    const way = KEYS[event.key];
    const { chosen } = useBench.getState();
    const isTyping = event.target instanceof HTMLElement && event.target.closest("input, select");
    if (way === undefined || chosen === null || isTyping || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    event.stopPropagation();
    void ask("circuitsNeighbours", chosen).then((neighbours) => {
      const next = wayOn(neighbours, way, came.current);
      if (next === null) return;
      came.current = chosen.id;
      choose({ kind: next.kind, id: next.id });
    });
  };
}
