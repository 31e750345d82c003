/** What the worker answers for LoomBoard. */
export const boardAnswers = {};
