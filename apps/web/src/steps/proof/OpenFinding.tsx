import { type ReactNode, useEffect } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { SeverityTag } from "../../frame/SeverityTag.tsx";
import { choose, showSum, useBench } from "../../store/benchStore.ts";
import { goTo } from "../../store/route.ts";
import { useTry } from "../try/tryStore.ts";
import { Accepting } from "./Accepting.tsx";
import { FusePlot } from "./FusePlot.tsx";
import { type FindingRow, fuseOf, headlineOf, type SpokenFinding } from "./findingRows.ts";
import { PlaceOnMachine } from "./PlaceOnMachine.tsx";
import { Remedies } from "./Remedies.tsx";
import { subjectChosen, sumOfFinding } from "./sumOf.ts";
import { thingKinds } from "./thingKinds.ts";
import { Working } from "./Working.tsx";
import type { Whereabouts } from "./whereabouts.ts";

type OpenFindingProps = {
  readonly row: FindingRow | null;
  readonly where: Whereabouts | null;
  readonly place: { readonly at: number; readonly of: number };
  readonly onBack: () => void;
};

/** One finding opened: what it says, its working, where it is, what would mend it, and who answers for it. */
export function OpenFinding({ row, where, place, onBack }: OpenFindingProps): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  useEffect(() => {
    if (row !== null) showSum(sumOfFinding(row.finding, thingKinds(job)));
  }, [row?.id]);
  if (row === null) return <Clear />;
  const { finding, from } = row;
  const [headline, rest] = headlineOf(finding.message);
  const fuse = fuseOf(finding, where);
  const wire = ["wire", "flyLead"].includes(finding.subject.kind) ? finding.subject.id : null;
  return (
    <article className="proof-open" aria-label={headline}>
      <header className="proof-open-head">
        <SeverityTag severity={finding.severity} />
        <span className="note">
          {place.at} of {place.of} · {from === "check" ? "from the check" : "from the full proof"}
        </span>
        <button type="button" className="act proof-back" onClick={onBack}>
          list
        </button>
      </header>
      <h1>{headline}</h1>
      <p className="proof-rest">{rest}</p>
      <div className="proof-body">
        <div className="proof-picture">
          {fuse !== null && <FusePlot fuse={fuse} wire={wire} />}
          <Remedies finding={finding} />
          <Ways finding={finding} />
          <Accepting row={row} />
        </div>
        <div className="proof-reasons">
          <PlaceOnMachine finding={finding} where={where} />
          <Working finding={finding} />
          <Why code={finding.code} />
        </div>
      </div>
    </article>
  );
}

function Clear(): ReactNode {
  return (
    <div className="proof-open proof-clear">
      <h1>Nothing is open</h1>
      <p className="note">Choose a finding from the list.</p>
    </div>
  );
}

/** Where else the finding can be looked at. */
function Ways({ finding }: { finding: SpokenFinding }): ReactNode {
  const subject = subjectChosen(finding.subject);
  return (
    <div className="proof-ways">
      {subject !== null && (
        <button
          type="button"
          className="act"
          onClick={() => {
            choose(subject);
            goTo("circuits");
          }}
        >
          show in Circuits
        </button>
      )}
      {finding.state !== null && (
        <button
          type="button"
          className="act"
          onClick={() => {
            useTry.setState({ set: benchPositions(finding.state!), faults: [], atS: null });
            choose(subject);
            goTo("try");
          }}
        >
          see it on the bench
        </button>
      )}
      {finding.reproduce !== null && (
        <p className="note proof-command">
          the same at the command line: <code>copperwright {finding.reproduce.join(" ")}</code>
        </p>
      )}
    </div>
  );
}

/** Switches of a finding's state; a flasher's half and other conditions are no switch. */
const benchPositions = (state: Readonly<Record<string, string>>): Record<string, string> =>
  Object.fromEntries(Object.entries(state).filter(([id]) => /^[A-Za-z0-9_+-]+$/.test(id)));

function Why({ code }: { code: string }): ReactNode {
  const { answer } = useAnswer("proofWhy", { code });
  if (answer === null || answer.length === 0) return null;
  return (
    <details className="proof-why">
      <summary>Why it matters</summary>
      {answer.map((paragraph) => (
        <p key={paragraph}>{paragraph}</p>
      ))}
    </details>
  );
}
