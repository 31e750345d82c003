/** What the worker answers for Loom. */
export const loomAnswers = {};
