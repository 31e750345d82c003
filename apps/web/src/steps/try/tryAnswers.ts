/** What the worker answers for Try. */
export const tryAnswers = {};
