/** What the interface answers when it refuses: the status, what happened, and what to do. `{word}` is filled in from the case. */
export const SENTENCES = {
  "role-view": {
    status: 403,
    message:
      "This device may look but not change. Ask the owner of the bench to give it leave to edit.",
  },
  "role-owner": {
    status: 403,
    message: "Only the owner of the bench may do that, on the computer the bench runs on.",
  },
  "body-too-large": {
    status: 413,
    message: "What was sent is larger than {limit}. Send less at once.",
  },
  "body-not-json": {
    status: 400,
    message:
      "What was sent is not JSON. Load the page again; if it happens again, the page and the server do not fit together.",
  },
  "body-misfit": {
    status: 400,
    message:
      "What was sent has not the form the server knows: {fault}. Load the page again, so that page and server are of one version.",
  },
  "no-such-job": {
    status: 404,
    message: "There is no such job on this bench. See the list of jobs.",
  },
  "no-such-revision": {
    status: 404,
    message: "The job has no revision {revision}. See its list of revisions.",
  },
  "no-such-demo": { status: 404, message: "There is no demo of that name. See the list of demos." },
  "no-such-photograph": { status: 404, message: "There is no such photograph on this bench." },
  "no-such-exercise": {
    status: 404,
    message: "There is no such exercise on this bench. See the list of exercises.",
  },
  "no-such-conflict": {
    status: 404,
    message:
      "There is no such conflict, or somebody has settled it. See the job's list of conflicts.",
  },
  "job-unreadable": {
    status: 422,
    message: "The text is no job that can be read; nothing was saved.",
  },
  "job-newer": {
    status: 409,
    message:
      "This job was saved by a newer program and can only be looked at here. Bring this server up to date to change it.",
  },
  "app-newer": {
    status: 409,
    message:
      "The page is newer than the server. Bring the server up to date; until then the change stays on this device.",
  },
  "app-older": {
    status: 409,
    message:
      "The page is older than the server. Load it again; the change stays on this device until then.",
  },
  "change-refused": {
    status: 422,
    message: "The change cannot be made to revision {revision}; nothing was saved.",
  },
  "change-id-taken": {
    status: 409,
    message: "Another change has that id already. Send the change again under a new id.",
  },
  "settle-refused": {
    status: 422,
    message:
      "That version cannot be put in use in the job as it is now; nothing was saved. Mend what is named first, or keep the version in use.",
  },
  "settle-gone": {
    status: 409,
    message:
      "What the conflict was about is no longer in the job. Keep the version in use, or make the change by hand.",
  },
  busy: {
    status: 503,
    message:
      "Others are saving this job at this moment and the save did not get in between. Try again.",
  },
  "photograph-not-base64": {
    status: 400,
    message: "The photograph did not arrive whole (it is not base64). Send it again.",
  },
  "photograph-not-a-picture": {
    status: 415,
    message: "That is no photograph the bench takes. Take a JPEG, PNG, WebP or AVIF picture.",
  },
  "photograph-too-large": {
    status: 413,
    message: "The picture has more than {limit} million points. Make it smaller and send it again.",
  },
  "photograph-broken": {
    status: 422,
    message: "The picture cannot be read to its end. Take it again or export it anew.",
  },
  "exercise-misfit": {
    status: 422,
    message: "The fault does not fit the job; no exercise was made.",
  },
  "reading-refused": {
    status: 422,
    message: "The meter cannot be read so.",
  },
  "role-prices": {
    status: 403,
    message: "What the shop pays is shown to those who may edit.",
  },
  "price-list-unreadable": {
    status: 422,
    message: "That is no price list the bench can read; the list in use stays as it is.",
  },
  "price-list-moved": {
    status: 409,
    message:
      "Another price list was put in meanwhile; yours was not. Look at it, then put yours in again if it is still wanted.",
  },
  "no-such-price-list": { status: 404, message: "There is no such price list on this bench." },
  "backup-unreadable": {
    status: 422,
    message: "The file is no backup of this bench, or is damaged ({fault}); nothing was restored.",
  },
  "backup-too-large": {
    status: 413,
    message: "Unpacked, the backup would be larger than {limit}; nothing was unpacked.",
  },
  "backup-newer": {
    status: 409,
    message:
      "The backup was made by a newer program; nothing was restored. Bring this server up to date first.",
  },
  "server-trouble": {
    status: 500,
    message:
      "Something went wrong in the server; the change was not saved. Try again; if it happens again, the server's window says more.",
  },
} as const;

export type SentenceCode = keyof typeof SENTENCES;

type WordsIn<Text extends string> = Text extends `${string}{${infer Word}}${infer Rest}`
  ? Word | WordsIn<Rest>
  : never;

/** The words a sentence must be given. */
export type SentenceWords<Code extends SentenceCode> = {
  readonly [Word in WordsIn<(typeof SENTENCES)[Code]["message"]>]: string | number;
};
