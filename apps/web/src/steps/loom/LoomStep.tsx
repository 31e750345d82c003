import type { ReactNode } from "react";

export default function LoomStep(): ReactNode {
  return <h1>Loom</h1>;
}
