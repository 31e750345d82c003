/** What the worker answers for Parts. */
export const partsAnswers = {};
