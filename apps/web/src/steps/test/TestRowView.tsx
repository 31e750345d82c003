import type { TestSheetRow } from "@copperwright/engine/scenes";
import { printQuantity } from "@copperwright/engine/words";
import { type ReactNode, useState } from "react";
import { ask } from "../../engine/engineClient.ts";
import { readReading } from "../../entry/readReading.ts";
import { Tick } from "../../frame/marks.tsx";
import { showSum, useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import { recordId, tick, today } from "../build/buildDone.ts";

const UNIT_WORDS: Readonly<Record<string, string>> = { ohm: "Ω", Mohm: "MΩ" };
const VERDICTS: Readonly<Record<string, string>> = {
  open: "",
  good: "good",
  outside: "outside",
  seen: "noted",
};

/** One thing to measure or to look at: what is expected, a field for what was read, and what that means. */
export function TestRowView({ row }: { row: TestSheetRow }): ReactNode {
  return (
    <div className={`test-row ${row.verdict}`}>
      <div className="test-what">
        <b>{row.what}</b>
        {row.note !== "" && <span className="note">{row.note}</span>}
      </div>
      <div className="test-expected">
        {row.expected !== "" && (
          <button type="button" className="figure-link" onClick={() => explain(row)}>
            {row.expected}
          </button>
        )}
        {row.limit !== "" && <span className="note">{row.limit}</span>}
      </div>
      {row.isRead ? <ReadField row={row} /> : <TickBox row={row} />}
      <span className="test-verdict" role="status">
        {VERDICTS[row.verdict]}
      </span>
    </div>
  );
}

function ReadField({ row }: { row: TestSheetRow }): ReactNode {
  const [typed, setTyped] = useState<string | null>(null);
  const unit = UNIT_WORDS[row.unit] ?? row.unit;
  const read = typed === null ? null : readReading(typed, row.unit);
  const isBad = typed !== null && typed.trim() !== "" && read === null;
  const take = (): void => {
    if (read === null) return;
    void keepReading(row, read);
    setTyped(null);
  };
  const shown = row.readValue === null ? "" : shownReading(row.readValue);
  return (
    <label className="test-read">
      <span className="only-spoken">
        read, {unit}: {row.what}
      </span>
      <input
        className="field"
        inputMode="decimal"
        autoComplete="off"
        placeholder={unit}
        aria-invalid={isBad}
        value={typed ?? shown}
        onFocus={(event) => event.target.select()}
        onChange={(event) => setTyped(event.target.value)}
        onKeyDown={(event) => {
          if (event.key === "Enter") take();
          if (event.key === "Escape") setTyped(null);
        }}
        onBlur={take}
      />
      {isBad && <span className="note">type a number in {unit}</span>}
    </label>
  );
}

/** As typed, without the dust of binary fractions. */
const shownReading = (value: number): string => String(Number(value.toPrecision(10)));

function TickBox({ row }: { row: TestSheetRow }): ReactNode {
  const isOn = row.verdict !== "open";
  return (
    <button
      type="button"
      className="test-tick"
      aria-pressed={isOn}
      aria-label={`done: ${row.what}`}
      onClick={() => tick(row.subject, "tested", row.what.slice(0, 60))}
    >
      {isOn && <Tick />}
    </button>
  );
}

/** A new reading takes the place of the last one of the same row; the revisions keep both. */
async function keepReading(row: TestSheetRow, typed: number): Promise<void> {
  const record = await ask("testRecord", { unit: row.unit, read: typed });
  const by = useBench.getState().visitor?.who ?? "somebody";
  const item = {
    id: recordId(),
    test: row.test,
    subject: row.subject,
    ...record,
    by,
    date: today(),
  };
  const add = { op: "add", list: "tests", item } as const;
  const what = `${row.what}: ${typed} ${UNIT_WORDS[row.unit] ?? row.unit}`.slice(0, 120);
  if (row.last === null) await edit(what, add);
  else
    await edit(what, {
      op: "batch",
      name: what,
      operations: [{ op: "remove", list: "tests", id: row.last.id }, add],
    });
}

function explain(row: TestSheetRow): void {
  const value =
    row.expectedValue === null
      ? row.expected
      : printQuantity(row.expectedValue, row.unit === "" ? "V" : row.unit);
  showSum({
    name: `${row.what}, expected`,
    result: value,
    equation: row.group === "" ? "solved for this machine" : `solved in the state ${row.group}`,
    inputs: [],
    note: `${row.limit === "" ? "no limit stated" : row.limit}; full battery, copper at 20 °C`,
  });
}
