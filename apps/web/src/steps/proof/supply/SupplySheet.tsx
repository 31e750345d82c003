import type { ReactNode } from "react";
import { ChargeTopic } from "./ChargeTopic.tsx";
import { ConvertTopic } from "./ConvertTopic.tsx";
import { HeatTopic } from "./HeatTopic.tsx";
import { LampTopic } from "./LampTopic.tsx";
import { RideTopic } from "./RideTopic.tsx";
import { StandTopic } from "./StandTopic.tsx";
import { StartTopic } from "./StartTopic.tsx";
import "./supply.css";
import { openTopic, type Topic, useSupply } from "./supplyStore.ts";
import { TOPIC_WORDS } from "./topicAnswer.ts";
import { useShownTopic } from "./useShownTopic.ts";

/** Will it charge, will it start, will it last, can it be other volts: the question opened, with its plots. */
export function SupplySheet(): ReactNode {
  const topic = useShownTopic();
  if (topic === null) return null;
  return (
    <div className="proof-open supply">
      <div className="proof-open-head">
        <h1>{TOPIC_WORDS[topic]}</h1>
        <button type="button" className="act small proof-back" onClick={() => openTopic(null)}>
          all questions
        </button>
      </div>
      <Body topic={topic} />
    </div>
  );
}

function Body({ topic }: { topic: Topic }): ReactNode {
  const { view, fault, trace } = useSupply();
  if (topic === "convert") return <ConvertTopic />;
  if (fault !== null) return <p role="alert">This could not be reckoned: {fault}</p>;
  if (view === null) return <p className="waiting note">being reckoned</p>;
  if (!view.ok)
    return (
      <div role="alert" className="supply-part">
        <p>
          <b>{trace?.name ?? "The ride"} was not taken.</b>
        </p>
        {view.refusals.map(({ line, found, message, remedy }) => (
          <p key={`${line} ${message}`}>
            {line !== null && `Line ${line}: ${found}. `}
            {message} {remedy}
          </p>
        ))}
        <button type="button" className="act" onClick={() => useSupply.setState({ trace: null })}>
          let go of it
        </button>
      </div>
    );
  const { answer, before, names } = view;
  if (topic === "charge") return <ChargeTopic answer={answer} before={before} />;
  if (topic === "ride") return <RideTopic answer={answer} before={before} />;
  if (topic === "start") return <StartTopic answer={answer} names={names} />;
  if (topic === "stand") return <StandTopic answer={answer} names={names} />;
  if (topic === "lamps") return <LampTopic answer={answer} names={names} />;
  return <HeatTopic answer={answer} before={before} />;
}
