/** What the worker answers for Circuits. */
export const circuitsAnswers = {};
