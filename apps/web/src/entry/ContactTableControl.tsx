import type { ReactNode } from "react";

type ContactTableControlProps = {
  readonly name: string;
  readonly pins: readonly string[];
  readonly positions: readonly {
    readonly id: string;
    readonly word: string;
    readonly joins: readonly (readonly string[])[];
  }[];
  readonly now: string;
  readonly onPosition: (id: string) => void;
};

const CELL_PX = 44;

/** A switch as a meter finds it: rows are positions, columns pins, joined pins dots on one line. The row tapped is the position. */
export function ContactTableControl({
  name,
  pins,
  positions,
  now,
  onPosition,
}: ContactTableControlProps): ReactNode {
  return (
    <fieldset className="contact-table">
      <legend>{name}</legend>
      <div className="contact-head" aria-hidden="true">
        <span className="contact-word" />
        {pins.map((pin) => (
          <span key={pin} className="contact-pin">
            {pin}
          </span>
        ))}
      </div>
      {positions.map(({ id, word, joins }) => (
        <label key={id} className={id === now ? "contact-row now" : "contact-row"}>
          <input type="radio" name={name} checked={id === now} onChange={() => onPosition(id)} />
          <span className="contact-word">{word}</span>
          <Joins pins={pins} joins={joins} />
        </label>
      ))}
    </fieldset>
  );
}

function Joins({
  pins,
  joins,
}: {
  pins: readonly string[];
  joins: readonly (readonly string[])[];
}): ReactNode {
  const x = (pin: string): number => pins.indexOf(pin) * CELL_PX + CELL_PX / 2;
  const lanes = joins.length;
  const y = (lane: number): number => (36 * (lane + 1)) / (lanes + 1);
  const joined = new Set(joins.flat());
  const words = joins.map((group) => group.join(" with ")).join(", ");
  return (
    <svg
      className="contact-joins"
      width={pins.length * CELL_PX}
      height="36"
      role="img"
      aria-label={words === "" ? "nothing joined" : `joins ${words}`}
    >
      {pins
        .filter((pin) => !joined.has(pin))
        .map((pin) => (
          <circle
            key={pin}
            cx={x(pin)}
            cy="18"
            r="4"
            fill="none"
            stroke="currentColor"
            strokeWidth="1.5"
          />
        ))}
      {joins.map((group, lane) => (
        <g key={group.join(" ")}>
          <line
            x1={Math.min(...group.map(x))}
            x2={Math.max(...group.map(x))}
            y1={y(lane)}
            y2={y(lane)}
            stroke="currentColor"
            strokeWidth="2.5"
          />
          {group.map((pin) => (
            <circle key={pin} cx={x(pin)} cy={y(lane)} r="5" fill="currentColor" />
          ))}
        </g>
      ))}
    </svg>
  );
}
