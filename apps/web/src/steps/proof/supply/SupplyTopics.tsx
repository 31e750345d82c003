import type { ReactNode } from "react";
import { openTopic, TOPICS, useSupply } from "./supplyStore.ts";
import { TOPIC_WORDS, topicAnswer } from "./topicAnswer.ts";
import { useShownTopic } from "./useShownTopic.ts";
import { useSupplyAsking } from "./useSupplyAsking.ts";

/** The questions a rider asks, each with its answer in a line; a tap opens it. */
export function SupplyTopics(): ReactNode {
  useSupplyAsking();
  const { view, isStale } = useSupply();
  const shown = useShownTopic();
  return (
    <section className="proof-findings" aria-label="Questions" aria-busy={isStale}>
      <ol>
        {TOPICS.map((topic) => (
          <li key={topic}>
            <button
              type="button"
              className={topic === shown ? "proof-row now" : "proof-row"}
              aria-current={topic === shown}
              onClick={() => openTopic(topic)}
            >
              <span className="proof-row-words">{TOPIC_WORDS[topic]}</span>
              <span className="note">
                {view?.ok === true ? topicAnswer(topic, view.answer) : "being reckoned"}
              </span>
            </button>
          </li>
        ))}
      </ol>
    </section>
  );
}
