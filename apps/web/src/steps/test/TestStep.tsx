import type { ReactNode } from "react";

export default function TestStep(): ReactNode {
  return <h1>Test</h1>;
}
