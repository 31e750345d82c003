import type { ReactNode } from "react";

export default function PartsStep(): ReactNode {
  return <h1>Parts</h1>;
}
