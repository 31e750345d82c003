import { type ReactNode, useEffect, useState } from "react";
import { useBench } from "../../store/benchStore.ts";
import { BenchCare } from "./BenchCare.tsx";
import { JobCard } from "./JobCard.tsx";
import "./jobs.css";
import { refreshJobs, useJobList } from "./jobList.ts";
import { NewJob } from "./NewJob.tsx";

/** The wall of job cards: each machine with its loom, its verdict and its last change. */
export default function JobsStep(): ReactNode {
  const { jobs, isAway } = useJobList();
  const role = useBench((bench) => bench.visitor?.role ?? "view");
  const [words, setWords] = useState("");
  const [hasArchived, setArchived] = useState(false);
  useEffect(() => {
    void refreshJobs();
  }, []);
  const shown = (jobs ?? [])
    .filter((job) => job.isArchived === hasArchived)
    .filter((job) =>
      `${job.name} ${job.machine}`.toLowerCase().includes(words.toLowerCase().trim()),
    );
  const isEmpty = jobs !== null && jobs.length === 0;
  return (
    <div className="jobs">
      <header className="jobs-head">
        <h1>{hasArchived ? "Put away" : "Jobs"}</h1>
        {!isEmpty && (
          <label className="jobs-find">
            <span className="note">find</span>
            <input
              className="field"
              value={words}
              onChange={(event) => setWords(event.target.value)}
            />
          </label>
        )}
        {!isEmpty && (
          <button type="button" className="act" onClick={() => setArchived(!hasArchived)}>
            {hasArchived ? "back to the jobs at hand" : "put away"}
          </button>
        )}
      </header>
      {isAway && (
        <p className="note">
          Offline: the list is the last one this device saw. Jobs it has kept can be opened.
        </p>
      )}
      {jobs !== null && shown.length === 0 && !isEmpty && (
        <p className="note">No job of that name here.</p>
      )}
      <ul className="jobs-wall">
        {shown.map((job) => (
          <JobCard key={job.key} job={job} />
        ))}
      </ul>
      {role !== "view" && <NewJob isFirst={isEmpty} />}
      <BenchCare />
    </div>
  );
}
