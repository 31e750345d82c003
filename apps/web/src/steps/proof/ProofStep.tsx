import type { ReactNode } from "react";

export default function ProofStep(): ReactNode {
  return <h1>Proof</h1>;
}
