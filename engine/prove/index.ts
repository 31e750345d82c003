/** Prove: every state, every open and every short, and whether each wire outlives it. */
export type { ProofInput, ProofOptions } from "./proofInput.ts";
