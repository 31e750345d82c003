import type { ReactNode } from "react";

export default function TryStep(): ReactNode {
  return <h1>Try</h1>;
}
