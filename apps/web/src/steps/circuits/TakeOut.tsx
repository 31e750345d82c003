import type { ReactNode } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";

type TakeOutProps = {
  readonly list: "joints" | "connectors";
  readonly id: string;
  readonly word: string;
  readonly onTake: () => Promise<void>;
  readonly onTakeAll: (wireCount: number) => Promise<void>;
};

/** Taking a joint or connector out: where wires only pass it they become whole again; where more hangs on it, that is said, and going with all of it is an act of its own. */
export function TakeOut({ list, id, word, onTake, onTakeAll }: TakeOutProps): ReactNode {
  const { answer } = useAnswer("wiringHanging", { holder: list, id });
  const wireCount = answer?.hanging.wires.length ?? 0;
  return (
    <>
      <div className="slip-verbs">
        <button type="button" className="act small" onClick={() => void onTake()}>
          take it out
        </button>
        {answer?.refusal != null && (
          <button type="button" className="act small" onClick={() => void onTakeAll(wireCount)}>
            remove it with its {wireCount} wires
          </button>
        )}
      </div>
      <p className="note">
        {answer?.refusal == null
          ? `Where two wires meet in ${word}, they become one again.`
          : answer.refusal}
      </p>
    </>
  );
}
