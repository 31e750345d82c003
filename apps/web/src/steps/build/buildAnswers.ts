/** What the worker answers for Build. */
export const buildAnswers = {};
