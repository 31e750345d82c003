import { type ReactNode, useEffect, useId, useRef, useState } from "react";
import { closeKeys, useKeysShown } from "./keysState.ts";
import {
  firstShortcuts,
  putShortcut,
  SHORTCUTS,
  turnShortcuts,
  useShortcuts,
} from "./shortcuts.ts";

/** Single keys with what they do: changed, emptied, switched off altogether; kept on this device. */
export function KeysSlip(): ReactNode {
  const isOpen = useKeysShown((keys) => keys.isOpen);
  return isOpen ? <OpenSlip /> : null;
}

function OpenSlip(): ReactNode {
  const isOn = useShortcuts((shortcuts) => shortcuts.isOn);
  const first = useRef<HTMLInputElement>(null);
  const [version, setVersion] = useState(0);
  useEffect(() => first.current?.focus(), []);
  return (
    <section
      className="slip keys-slip"
      aria-label="Keys"
      onKeyDown={(event) => event.key === "Escape" && closeKeys()}
    >
      <header className="slip-head">
        <div className="slip-title">Keys</div>
        <button type="button" className="act small" onClick={closeKeys}>
          close
        </button>
      </header>
      <label className="keys-row">
        <input
          ref={first}
          type="checkbox"
          checked={isOn}
          onChange={(event) => turnShortcuts(event.target.checked)}
        />
        single keys act on this device
      </label>
      <p className="note">
        Press another key in a field to change it; empty it and that key does nothing. Enter,
        Escape, arrows and keys with Control always act.
      </p>
      <ul>
        {SHORTCUTS.map(({ name, word }) => (
          <KeyRow key={`${version} ${name}`} name={name} word={word} isOn={isOn} />
        ))}
      </ul>
      <button
        type="button"
        className="act"
        onClick={() => {
          firstShortcuts();
          setVersion(version + 1);
        }}
      >
        all as they were at first
      </button>
    </section>
  );
}

type KeyRowProps = {
  readonly name: (typeof SHORTCUTS)[number]["name"];
  readonly word: string;
  readonly isOn: boolean;
};

function KeyRow({ name, word, isOn }: KeyRowProps): ReactNode {
  const now = useShortcuts(({ keys }) => keys[name]);
  const [fault, setFault] = useState<string | null>(null);
  const id = useId();
  // What is typed after what stands there is the new key.
  const take = (typed: string): void => {
    const key = typed === "" ? "" : typed.startsWith(now) ? typed.slice(now.length) : typed;
    setFault(key === now ? null : putShortcut(name, key));
  };
  return (
    <li>
      <div className="keys-row">
        <input
          id={id}
          className="field key-field"
          value={now}
          placeholder="none"
          autoComplete="off"
          autoCapitalize="off"
          spellCheck={false}
          aria-disabled={!isOn}
          aria-invalid={fault !== null}
          aria-describedby={`${id}-fault`}
          onFocus={(event) => event.target.select()}
          onChange={(event) => take(event.target.value)}
        />
        <label htmlFor={id}>{word}</label>
      </div>
      <p id={`${id}-fault`} className="note key-fault" aria-live="polite">
        {fault}
      </p>
    </li>
  );
}
