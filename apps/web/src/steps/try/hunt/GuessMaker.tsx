import { printNumber } from "@copperwright/engine/words";
import { type ReactNode, useState } from "react";
import { useBench } from "../../../store/benchStore.ts";
import { Choice } from "../EngineControl.tsx";
import { PlacePicker } from "../PlacePicker.tsx";
import type { TryMachine } from "../worker/tryMachine.ts";
import { type Guess, sendGuess } from "./huntApi.ts";
import { useHunt } from "./huntStore.ts";

const KINDS = ["open", "corroded", "short", "swapped"] as const;
const SAID = { short: "shorted" };

/** The learner's verdict: what is wrong, and where. */
export function GuessMaker({ machine }: { machine: TryMachine }): ReactNode {
  const chosen = useBench((bench) => bench.chosen?.id ?? "");
  const isThere =
    machine.wires.some(({ id }) => id === chosen) ||
    machine.places.some(({ ref }) => ref === chosen);
  const [kind, setKind] = useState<(typeof KINDS)[number]>("open");
  const [picked, setPicked] = useState("");
  const [other, setOther] = useState("");
  const place = picked === "" && isThere ? chosen : picked;
  const guess = guessOf(machine, kind, place, other);
  const words = `${place} ${SAID[kind as "short"] ?? kind}`;
  return (
    <section aria-label="Your verdict">
      <h2>Your verdict</h2>
      <Choice label="What is wrong" words={KINDS} said={SAID} now={kind} onWord={setKind} />
      <PlacePicker machine={machine} place={place} onPlace={setPicked} />
      {(kind === "swapped" || kind === "short") && (
        <OtherPicker kind={kind} machine={machine} other={other} onOther={setOther} />
      )}
      <button
        type="button"
        className="act filled"
        disabled={guess === null}
        onClick={() => guess !== null && void sendGuess(guess, words)}
      >
        that is it
      </button>
      <Guesses />
    </section>
  );
}

/** A short is guessed by the pins that touch; of a wire, its first end. */
function guessOf(
  machine: TryMachine,
  kind: (typeof KINDS)[number],
  place: string,
  other: string,
): Guess | null {
  if (place === "") return null;
  if (kind === "open" || kind === "corroded") return { kind, place };
  const pinOf = (id: string): string => machine.wires.find((wire) => wire.id === id)?.from ?? id;
  if (kind === "short") {
    const a = pinOf(place);
    return a.includes(".") ? { kind, a, b: other === "" ? "earth" : pinOf(other) } : null;
  }
  const areWires = [place, other].every((id) => machine.wires.some((wire) => wire.id === id));
  return areWires && place !== other ? { kind, wires: [place, other] } : null;
}

type OtherProps = {
  readonly kind: "short" | "swapped";
  readonly machine: TryMachine;
  readonly other: string;
  readonly onOther: (other: string) => void;
};

function OtherPicker({ kind, machine, other, onOther }: OtherProps): ReactNode {
  return (
    <label className="entry">
      <span className="note">{kind === "short" ? "touches" : "with"}</span>
      <select className="field" value={other} onChange={(event) => onOther(event.target.value)}>
        <option value="">{kind === "short" ? "earth, the frame" : "choose"}</option>
        {machine.wires.map(({ id, label, from, to }) => (
          <option key={id} value={id}>
            {label}: {from} to {to}
          </option>
        ))}
      </select>
    </label>
  );
}

function Guesses(): ReactNode {
  const guesses = useHunt((hunt) => hunt.guesses);
  return (
    <ul aria-live="polite">
      {guesses.map(({ words, isRight, isNear, minutes }, k) => (
        <li key={k} className="try-row">
          <span>{words}</span>
          <span className="note">{printNumber(minutes, 0)} min</span>
          <b>{isRight ? "found it" : isNear ? "close, not it" : "not it"}</b>
        </li>
      ))}
    </ul>
  );
}
