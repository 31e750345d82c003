/** What the worker answers for Proof. */
export const proofAnswers = {};
