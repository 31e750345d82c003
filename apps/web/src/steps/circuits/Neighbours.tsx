import type { Neighbour } from "@copperwright/engine/scenes";
import type { ReactNode } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { choose } from "../../store/benchStore.ts";

const WAYS: readonly { readonly way: Neighbour["way"]; readonly word: string }[] = [
  { way: "feed", word: "towards the live" },
  { way: "beside", word: "beside" },
  { way: "return", word: "towards the return" },
];

/** What lies next to a thing along the wiring; the arrows go the same ways. */
export function Neighbours({ thing }: { thing: { kind: string; id: string } }): ReactNode {
  const { answer } = useAnswer("circuitsNeighbours", thing);
  if (answer === null || answer.length === 0) return null;
  return (
    <nav className="neighbours" aria-label="Next along the wiring">
      {WAYS.map(({ way, word }) => {
        const own = answer.filter((one) => one.way === way);
        return (
          own.length > 0 && (
            <div key={way}>
              <span className="note">{word}</span>
              <ul>
                {own.map(({ kind, id, pin, name }) => (
                  <li key={`${id} ${pin}`}>
                    <button
                      type="button"
                      className="figure-link"
                      onClick={() => choose({ kind, id })}
                    >
                      {name}
                    </button>{" "}
                    <span className="note">{pin}</span>
                  </li>
                ))}
              </ul>
            </div>
          )
        );
      })}
    </nav>
  );
}
