import type { TestSheetSection } from "@copperwright/engine/scenes";
import { type ReactNode, useEffect, useState } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { noteStep } from "../../store/benchStore.ts";
import { useAwakeScreen } from "../../store/useAwakeScreen.ts";
import "./test.css";
import { TestRowView } from "./TestRowView.tsx";

/** Expected beside read, in the order a careful hand tests a new loom. */
export default function TestStep(): ReactNode {
  useAwakeScreen();
  const { answer: sections, fault } = useAnswer("testSheet", undefined);
  const [heading, setHeading] = useState<string | null>(null);
  const rows = sections?.flatMap((section) => section.rows) ?? [];
  const doneCount = rows.filter(({ verdict }) => verdict !== "open").length;
  const outsideCount = rows.filter(({ verdict }) => verdict === "outside").length;
  useEffect(() => {
    if (rows.length === 0) return;
    const text = outsideCount > 0 ? `${outsideCount} outside` : `${doneCount} of ${rows.length}`;
    noteStep("test", {
      text,
      box:
        doneCount === 0
          ? "empty"
          : doneCount === rows.length && outsideCount === 0
            ? "ticked"
            : "half",
    });
  }, [rows.length, doneCount, outsideCount]);
  if (fault !== null) return <p role="alert">The test sheet could not be made: {fault}</p>;
  if (sections === null) return <p className="note waiting">solving the named states</p>;
  const open = sections.find((section) => section.heading === heading) ?? firstOpen(sections);
  return (
    <div className="test">
      <nav className="test-list" aria-label="Sections of the test sheet">
        <h1>Test</h1>
        <ol>
          {sections.map((section) => (
            <li key={section.heading}>
              <button
                type="button"
                className={section === open ? "plain test-section now" : "plain test-section"}
                aria-current={section === open}
                onClick={() => setHeading(section.heading)}
              >
                <b>{section.heading}</b>
                <span className="note">{doneWords(section)}</span>
              </button>
            </li>
          ))}
        </ol>
      </nav>
      {open !== undefined && <Section section={open} />}
    </div>
  );
}

const firstOpen = (sections: readonly TestSheetSection[]): TestSheetSection | undefined =>
  sections.find(({ rows }) => rows.some(({ verdict }) => verdict === "open")) ?? sections[0];

function doneWords({ rows }: TestSheetSection): string {
  const outside = rows.filter(({ verdict }) => verdict === "outside").length;
  const done = rows.filter(({ verdict }) => verdict !== "open").length;
  return outside > 0 ? `${outside} outside` : `${done} of ${rows.length}`;
}

function Section({ section }: { section: TestSheetSection }): ReactNode {
  let group = "";
  return (
    <section className="test-sheet" aria-label={section.heading}>
      <h2>{section.heading}</h2>
      {section.lead !== "" && <p className="note">{section.lead}</p>}
      <Cautions heading={section.heading} />
      <ol>
        {section.rows.map((row) => {
          const head = row.group !== group && row.group !== "" ? row.group : null;
          group = row.group;
          return (
            <li key={`${row.test} ${row.subject}`}>
              {head !== null && <h3 className="test-group">{head}</h3>}
              <TestRowView row={row} />
            </li>
          );
        })}
      </ol>
    </section>
  );
}

/** What can hurt, where it can hurt. */
function Cautions({ heading }: { heading: string }): ReactNode {
  if (heading.includes("First power")) {
    return (
      <p className="caution">
        Never power a new loom from a charged battery without a current limit. A lamp in series
        first, one fuse at a time.
      </p>
    );
  }
  if (heading.includes("Starter") || heading.includes("Charging")) {
    return (
      <p className="caution">
        Out of gear, rear wheel clear, hands and leads away from what turns. Batteries give off
        hydrogen: no flame, no sparks.
      </p>
    );
  }
  return null;
}
