/** What the worker answers for Jobs. */
export const jobsAnswers = {};
