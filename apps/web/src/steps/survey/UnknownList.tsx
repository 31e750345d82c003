import type { Unknown } from "@copperwright/engine";
import type { ReactNode } from "react";
import { UnknownRow } from "./UnknownRow.tsx";

const GROUPS: Readonly<Record<Unknown["group"], string>> = {
  runs: "Lengths of runs",
  wires: "Sizes of wires that stay",
  fuses: "Marks on fuses",
  switches: "Contact tables",
  generator: "What the generator gives",
  battery: "The battery",
  loads: "What things draw and bear",
  earths: "Earths without a wire",
  places: "Where things are",
};

/** The to-do list of a survey: what is missing or guessed, how to find out, and a field to put it in. */
export function UnknownList({ unknown }: { unknown: readonly Unknown[] | null }): ReactNode {
  if (unknown === null) return <p className="note">looking through the job</p>;
  if (unknown.length === 0)
    return <p>Everything that matters has been measured, read or chosen. Nothing is guessed.</p>;
  const groups = [...new Set(unknown.map(({ group }) => group))];
  return (
    <div className="unknown-groups">
      {groups.map((group) => {
        const own = unknown.filter((one) => one.group === group);
        return (
          <section key={group} aria-label={GROUPS[group]}>
            <h3 className="unknown-head">
              {GROUPS[group]} <span className="note">{own.length}</span>
            </h3>
            <ul className="unknown-rows">
              {own.map((one) => (
                <UnknownRow key={one.id} unknown={one} />
              ))}
            </ul>
          </section>
        );
      })}
    </div>
  );
}
