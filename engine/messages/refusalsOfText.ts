/** Refusals of a text that is not a job document at all, or not one that can be read safely. */
export const refusalsOfText = {
  "text-not-text": {
    message: "A job is read from text, and this is {found}.",
    remedy: "Give the contents of the job file as text.",
  },
  "text-empty": {
    message: "The file is empty.",
    remedy: "Open a job file, or start from one of the demos.",
  },
  "text-too-large": {
    message: "The file is larger than the {limitMB} MB this program reads.",
    remedy: "Check that it is a job file; photographs belong beside it as attachments, not inside.",
  },
  "text-too-deep": {
    message: "Brackets are nested more than {limitCount} deep, and no job needs that.",
    remedy:
      "Check that it is a job file, or mend the line where brackets are opened and not closed.",
  },
  "json-syntax": {
    message: "This is not JSON at column {column}: {fault}.",
    remedy: "{advice}",
  },
  "json-duplicate-key": {
    message: 'The name "{key}" stands twice in the same braces, so one of the two would be lost.',
    remedy: "Keep one of them; it first stands on line {firstLine}.",
  },
  "json-number-too-big": {
    message: "The number {found} is larger than this program can hold.",
    remedy: "Write the number that was meant.",
  },
  "json-number-too-small": {
    message: "The number {found} is so small that it would be read as nought.",
    remedy: "Write 0 if nothing is meant, or the number that was meant.",
  },
  "json-broken-character": {
    message: "This text holds half of a two-part character, which no screen or printer can show.",
    remedy: "Type the text again.",
  },
  "json-reserved-name": {
    message: 'The name "{key}" has a meaning of its own in programs and cannot be used in a job.',
    remedy: "Use another name.",
  },
  "json-list-too-long": {
    message:
      "More than {limitCount} items stand between one pair of brackets, the most a job may hold.",
    remedy: "Split the job into several.",
  },
  "json-too-many-values": {
    message: "The file holds more than {limitCount} values, far more than any job.",
    remedy: "Check that it is a job file; if it is, split the job into several.",
  },
  "job-not-object": {
    message: "A job document is one pair of braces holding named fields; this is {found}.",
    remedy: "Check that it is a job file.",
  },
  "job-no-version": {
    message: 'The field "copperwrightJob" is missing, so nothing says that this is a job document.',
    remedy: 'If it is one, add "copperwrightJob": {version} as its first field.',
  },
  "job-version-unreadable": {
    message:
      "The version of the document is {found}, which no version of this program has written.",
    remedy: 'The field "copperwrightJob" holds a whole number from 0 to {version}.',
  },
  "job-newer-version": {
    message:
      "This job was made by a newer version of the program (document version {found}; this one reads up to {version}).",
    remedy: "Update this program. The file has not been changed.",
  },
  "more-problems": {
    message: "At least {count} more problems were found and are not listed.",
    remedy: "Mend those listed first, then read the job again.",
  },
} as const;
