import type { ReactNode } from "react";

export default function PapersStep(): ReactNode {
  return <h1>Papers</h1>;
}
