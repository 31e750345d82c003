import type {
  JobSeen,
  JobsTable,
  RevisionLine,
  RevisionsTable,
  StoredConflict,
} from "../storage/index.ts";

/** A job as the list shows it. The summary is what a device said of revision `summaryRevision`; it decides nothing. */
export function listedJob(row: JobsTable) {
  return {
    key: row.key,
    name: row.name,
    machine: row.machine,
    revision: row.revision,
    savedAt: row.saved_at,
    savedBy: row.saved_by,
    isArchived: row.is_archived === 1,
    summary: row.summary === null ? null : (JSON.parse(row.summary) as unknown),
    summaryRevision: row.summary_revision,
  };
}

export function polledJob({ key, revision, saved_at, saved_by, device }: JobSeen) {
  return { key, revision, savedAt: saved_at, savedBy: saved_by, device };
}

export function openedJob(row: RevisionsTable) {
  return {
    key: row.job_key,
    revision: row.revision,
    text: row.text,
    jobVersion: row.job_version,
    savedAt: row.saved_at,
    savedBy: row.saved_by,
  };
}

export function revisionLine(row: RevisionLine) {
  return {
    revision: row.revision,
    savedAt: row.saved_at,
    savedBy: row.saved_by,
    device: row.device,
    whatChanged: row.what_changed,
  };
}

export function conflictAnswer({ conflict, ...about }: StoredConflict) {
  return { ...about, ...conflict, id: about.id, item: conflict.id ?? null };
}
