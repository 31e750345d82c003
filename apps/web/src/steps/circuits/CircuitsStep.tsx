import type { ReactNode } from "react";

export default function CircuitsStep(): ReactNode {
  return <h1>Circuits</h1>;
}
