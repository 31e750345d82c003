import { type ReactNode, useState } from "react";
import { SeverityTag } from "../../frame/SeverityTag.tsx";
import { choose } from "../../store/benchStore.ts";
import { type FindingRow, headlineOf, stationsOf } from "./findingRows.ts";
import { useStationNames } from "./useStationNames.ts";
import type { Whereabouts } from "./whereabouts.ts";

type FindingListProps = {
  readonly rows: readonly FindingRow[];
  readonly allCount: number;
  readonly open: string | null;
  readonly onOpen: (id: string) => void;
  /** What the list is narrowed to. */
  readonly filter: string | null;
  readonly where: Whereabouts | null;
};

/** So many of one kind are told before the rest is folded away. */
const KIND_SHOWN = 3;

export function FindingList(props: FindingListProps): ReactNode {
  const { rows, allCount, filter } = props;
  const [unfolded, setUnfolded] = useState<readonly string[]>([]);
  const kinds = kindsOf(rows);
  return (
    <section aria-label="Findings, worst first" className="proof-findings">
      <header className="proof-list-head">
        <h2>Findings</h2>
        <span className="note">worst first</span>
      </header>
      {filter !== null && (
        <p className="proof-filter">
          {rows.length} of {allCount} touch {filter}
          <button type="button" className="act small" onClick={() => choose(null)}>
            show all
          </button>
        </p>
      )}
      {rows.length === 0 && <p className="note">Nothing to tell here.</p>}
      <ol>
        {kinds.map(({ kind, own }) => {
          const isWhole = unfolded.includes(kind) || own.length <= KIND_SHOWN + 1;
          const isOpenBelow = own.slice(KIND_SHOWN).some(({ id }) => id === props.open);
          const shown = isWhole || isOpenBelow ? own : own.slice(0, KIND_SHOWN);
          return (
            <li key={kind}>
              <ol>
                {shown.map((row) => (
                  <FindingItem key={row.id} row={row} {...props} />
                ))}
              </ol>
              {shown.length < own.length && (
                <button
                  type="button"
                  className="figure-link proof-more"
                  onClick={() => setUnfolded([...unfolded, kind])}
                >
                  {own.length - shown.length} more of this kind
                </button>
              )}
            </li>
          );
        })}
      </ol>
    </section>
  );
}

/** Rows of one code and severity together, in the order of the first. */
function kindsOf(rows: readonly FindingRow[]) {
  const kinds = new Map<string, FindingRow[]>();
  for (const row of rows) {
    const { code, severity, accepted } = row.finding;
    const kind = `${code} ${severity} ${accepted === null}`;
    kinds.set(kind, [...(kinds.get(kind) ?? []), row]);
  }
  return [...kinds].map(([kind, own]) => ({ kind, own }));
}

function FindingItem({
  row,
  open,
  onOpen,
  where,
}: FindingListProps & { row: FindingRow }): ReactNode {
  const { finding, id } = row;
  const names = useStationNames();
  const [first] = where === null ? [] : stationsOf(finding, where);
  const [headline] = headlineOf(finding.message);
  return (
    <li>
      <button
        type="button"
        className={id === open ? "proof-row now" : "proof-row"}
        aria-current={id === open}
        onClick={() => onOpen(id)}
      >
        <span className="proof-row-top">
          <SeverityTag severity={finding.severity} />
          <span className="note">
            {finding.accepted === null ? first && names.get(first) : "accepted"}
          </span>
        </span>
        <span className="proof-row-words">{headline}</span>
      </button>
    </li>
  );
}
