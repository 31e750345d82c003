/** Refusals of a state that is asked for: what to do depends on what the job holds, and is said by the place that refuses. */
export const refusalsOfStates = {
  "state-unknown-switch": { message: "There is no switch of that name.", remedy: "{remedy}" },
  "state-unknown-position": {
    message: "The switch has no position of that name.",
    remedy: "{remedy}",
  },
  "state-unknown-relay": {
    message: "There is no relay of that name to hold.",
    remedy: "{remedy}",
  },
  "state-unknown-place": {
    message: "There is no wire, pin, bond or fuse of that name.",
    remedy: "{remedy}",
  },
  "state-unknown-pin": { message: "There is no pin of that name.", remedy: "{remedy}" },
  "state-hub-cannot-open": {
    message: "The mass of a body cannot be taken apart.",
    remedy: "{remedy}",
  },
  "state-number": { message: "That number cannot be worked with.", remedy: "{remedy}" },
  "state-no-body": {
    message: "Earth stands for the main body, and this job has no body.",
    remedy: "{remedy}",
  },
  "state-short-on-itself": {
    message: "Both ends of the short are the same pin.",
    remedy: "{remedy}",
  },
} as const;

export type StateRefusalCode = keyof typeof refusalsOfStates;
