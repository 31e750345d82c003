import { type ReactNode, useState } from "react";
import type { Picture } from "../../drawing/picture.ts";
import { verdictWord } from "../../frame/verdictWord.ts";
import { WireSwatch } from "../../frame/WireSwatch.tsx";
import { useBench } from "../../store/benchStore.ts";
import { goTo } from "../../store/route.ts";
import { archiveJob, type ListedJob, makeJob } from "./jobList.ts";
import type { JobCardView } from "./jobsAnswers.ts";
import { Revisions } from "./Revisions.tsx";
import { useCardView } from "./useCardView.ts";

/** One machine on the wall. The whole upper part opens it; the verbs below are for the job as a thing. */
export function JobCard({ job }: { job: ListedJob }): ReactNode {
  const view = useCardView(job);
  const [isHistory, setHistory] = useState(false);
  return (
    <li className="job-card">
      <button
        type="button"
        className="plain job-open"
        onClick={() => goTo("survey", job.key)}
        aria-label={`Open ${job.name}`}
      >
        <h2 className="job-name">{job.machine}</h2>
        <p className="note">{job.name}</p>
        <div className="job-picture">
          {view?.picture ? <Drawing picture={view.picture} /> : <Swatches view={view} />}
        </div>
        <p className="job-facts">
          <span className={`job-verdict ${view?.verdict ?? "checking"}`}>
            {view === null ? "being checked" : verdictWord(view.verdict)}
          </span>
          <span className="note">
            {view === null
              ? ""
              : `${view.nominalV} V, ${view.earthPolarity} earth, ${view.wires} wires`}
          </span>
        </p>
        <p className="note">
          rev {job.revision} ·{" "}
          {new Date(job.savedAt).toLocaleString([], { dateStyle: "medium", timeStyle: "short" })} ·{" "}
          {job.savedBy}
        </p>
      </button>
      <JobVerbs job={job} onHistory={() => setHistory(!isHistory)} isHistory={isHistory} />
      {isHistory && <Revisions jobKey={job.key} />}
    </li>
  );
}

function JobVerbs({
  job,
  onHistory,
  isHistory,
}: {
  job: ListedJob;
  onHistory: () => void;
  isHistory: boolean;
}): ReactNode {
  const role = useBench((bench) => bench.visitor?.role ?? "view");
  return (
    <div className="job-verbs">
      <a className="act small" href={`/api/jobs/${job.key}/export`} download>
        save as file
      </a>
      <button type="button" className="act small" aria-expanded={isHistory} onClick={onHistory}>
        history
      </button>
      {role !== "view" && (
        <>
          <button
            type="button"
            className="act small"
            onClick={() => void makeJob({ from: "copy", key: job.key })}
          >
            copy
          </button>
          <button
            type="button"
            className="act small"
            onClick={() => void archiveJob(job.key, !job.isArchived)}
          >
            {job.isArchived ? "bring back" : "put away"}
          </button>
        </>
      )}
    </div>
  );
}

function Swatches({ view }: { view: JobCardView | null }): ReactNode {
  return (
    <div className="job-swatches">
      {view?.colours.map((colour, i) => (
        <WireSwatch key={i} colour={colour} widthPx={240} heightPx={12} />
      ))}
    </div>
  );
}

/** The marks come from the engine on this device, never from the server. */
function Drawing({ picture }: { picture: Picture }): ReactNode {
  return (
    <svg
      viewBox={`0 0 ${picture.widthMm} ${picture.heightMm}`}
      className="scene-svg"
      role="img"
      aria-label="The machine with its loom"
      dangerouslySetInnerHTML={{ __html: picture.svg }}
    />
  );
}
