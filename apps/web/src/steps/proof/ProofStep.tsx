import { type ReactNode, useEffect, useMemo, useState } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { noteStep, useBench } from "../../store/benchStore.ts";
import { Choice } from "../try/EngineControl.tsx";
import { FindingList } from "./FindingList.tsx";
import { FuseList } from "./FuseList.tsx";
import { type FindingRow, findingRows, touching } from "./findingRows.ts";
import { OpenFinding } from "./OpenFinding.tsx";
import { ProofSummary } from "./ProofSummary.tsx";
import "./proof.css";
import { proveSoon, useProofRun } from "./proofRun.ts";
import { SupplySheet } from "./supply/SupplySheet.tsx";
import { SupplyTopics } from "./supply/SupplyTopics.tsx";
import { useShownTopic } from "./supply/useShownTopic.ts";
import { TruthTable } from "./TruthTable.tsx";
import { useFindingKeys } from "./useFindingKeys.ts";
import { useFindingMarks } from "./useFindingMarks.ts";
import { WireList } from "./WireList.tsx";

const PAGES = ["findings", "fuses", "wires", "truth", "supply"] as const;
type Page = (typeof PAGES)[number];
const SAID = { truth: "truth table", supply: "charging and starting" };

/** The verdict and everything behind it: findings worst first, fuse by fuse, wire by wire, and what each switch does. */
export default function ProofStep(): ReactNode {
  const check = useBench((bench) => bench.verdict.result);
  const edit = useBench((bench) => bench.editCount);
  const proof = useProofRun((run) => run.result);
  const { answer: where } = useAnswer("proofWhere", undefined);
  const [page, setPage] = useState<Page>("findings");
  useEffect(proveSoon, [edit]);
  const rows = useMemo(() => findingRows(check, proof), [check, proof]);
  const filter = useFilter();
  const shown = filter === null ? rows : touching(rows, filter, where);
  const [open, setOpen] = useOpen(shown);
  useFindingKeys(shown, open?.id ?? null, setOpen);
  useFindingMarks(rows, where);
  useStepNote(rows);
  const topic = useShownTopic();
  const isNarrowAndOpen =
    (open !== null && page === "findings") || (topic !== null && page === "supply");
  return (
    <div className={isNarrowAndOpen ? "proof reading" : "proof"}>
      <div className="proof-column">
        <Choice label="What to look at" words={PAGES} said={SAID} now={page} onWord={setPage} />
        {page === "findings" && (
          <FindingList
            rows={shown}
            allCount={rows.length}
            open={open?.id ?? null}
            onOpen={setOpen}
            filter={filter}
            where={where}
          />
        )}
        {page === "supply" && <SupplyTopics />}
        <ProofSummary />
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a long table is scrolled with the keys */}
      <section className="proof-main" tabIndex={0} aria-label={SAID[page as "truth"] ?? page}>
        {page === "findings" && (
          <OpenFinding
            key={open?.id ?? ""}
            row={open}
            where={where}
            place={{ at: shown.findIndex(({ id }) => id === open?.id) + 1, of: shown.length }}
            onBack={() => setOpen(null)}
          />
        )}
        {page === "fuses" && <FuseList />}
        {page === "wires" && <WireList />}
        {page === "truth" && <TruthTable />}
        {page === "supply" && <SupplySheet />}
      </section>
    </div>
  );
}

/** The thing chosen anywhere on the bench narrows the list, until it is let go. */
function useFilter(): string | null {
  const chosen = useBench((bench) => bench.chosen);
  return chosen === null || chosen.kind === "finding" ? null : chosen.id;
}

/** The finding opened; at a desk the worst one is open by itself. */
function useOpen(
  rows: readonly FindingRow[],
): readonly [FindingRow | null, (id: string | null) => void] {
  const [id, setId] = useState<string | null | undefined>(undefined);
  const picked = rows.find((row) => row.id === id) ?? null;
  const isWide = innerWidth >= 720;
  const open = picked ?? (isWide ? (rows[0] ?? null) : null);
  return [open, setId];
}

function useStepNote(rows: readonly FindingRow[]): void {
  const counted = rows.filter(({ finding }) => finding.accepted === null);
  const stops = counted.filter(({ finding }) => finding.severity === "stop").length;
  const mends = counted.filter(({ finding }) => finding.severity === "mend").length;
  useEffect(() => {
    const text = stops > 0 ? `${stops} stop` : mends > 0 ? `${mends} mend` : "";
    noteStep("proof", { text, box: stops + mends > 0 ? "half" : "ticked" });
  }, [stops, mends]);
}
