/** What the worker answers for Papers. */
export const papersAnswers = {};
