/** What the worker answers for Test. */
export const testAnswers = {};
