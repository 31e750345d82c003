import { type ReactNode, useRef } from "react";
import { ContactTableControl } from "../../entry/ContactTableControl.tsx";
import { setPosition, useTry } from "./tryStore.ts";
import type { TryMachine, TrySwitch } from "./worker/tryMachine.ts";

/** Every switch as a meter finds it; the row tapped is the position. What springs back is held or latched. */
export function SwitchColumn({ machine }: { machine: TryMachine }): ReactNode {
  return (
    <section className="try-switches" aria-label="Switches">
      <h2>Switches</h2>
      {machine.switches.map((one) =>
        one.isMomentary && one.positions.length === 2 ? (
          <Push key={one.id} push={one} />
        ) : (
          <Table key={one.id} one={one} />
        ),
      )}
    </section>
  );
}

/** Where a switch stands: put by hand, else with the engine, else at rest. */
export function useNow({ id, follows, rest }: TrySwitch): string {
  const put = useTry((bench) => bench.set[id]);
  const mode = useTry((bench) => bench.engine.mode);
  return put ?? follows?.[mode] ?? rest;
}

function Table({ one }: { one: TrySwitch }): ReactNode {
  const now = useNow(one);
  const isPut = useTry((bench) => bench.set[one.id] !== undefined);
  return (
    <div className="try-switch">
      <div className="try-switch-table">
        <ContactTableControl
          name={one.name}
          pins={one.pins}
          positions={one.positions}
          now={now}
          onPosition={(id) => setPosition(one.id, id === one.rest && !one.follows ? null : id)}
        />
      </div>
      {one.driven === "engine" && (
        <p className="note">
          follows the engine{isPut && ", put by hand "}
          {isPut && (
            <button type="button" className="act small" onClick={() => setPosition(one.id, null)}>
              let it follow
            </button>
          )}
        </p>
      )}
    </div>
  );
}

/** A push: worked while it is held down, or latched. */
function Push({ push }: { push: TrySwitch }): ReactNode {
  const now = useNow(push);
  const worked = push.positions.find(({ id }) => id !== push.rest)!;
  const isWorked = now !== push.rest;
  const isLatched = useRef(isWorked);
  const work = (): void => setPosition(push.id, worked.id);
  const letGo = (): void => {
    if (isWorked && !isLatched.current) setPosition(push.id, null);
  };
  const latch = (): void => {
    isLatched.current = !isWorked;
    setPosition(push.id, isWorked ? null : worked.id);
  };
  return (
    <div className={isWorked ? "try-push worked" : "try-push"} role="group" aria-label={push.name}>
      <span className="try-push-name">
        {push.name}
        <span className="note">{isWorked ? worked.word : "at rest"}</span>
      </span>
      <button
        type="button"
        className="act"
        onPointerDown={work}
        onPointerUp={letGo}
        onPointerLeave={letGo}
        onPointerCancel={letGo}
        onContextMenu={(event) => event.preventDefault()}
        onKeyDown={(event) => (event.key === " " || event.key === "Enter") && work()}
        onKeyUp={(event) => (event.key === " " || event.key === "Enter") && letGo()}
        onBlur={letGo}
        aria-label={`Hold ${push.name}`}
      >
        hold
      </button>
      <button type="button" className="act" aria-pressed={isWorked} onClick={latch}>
        latch
      </button>
    </div>
  );
}
