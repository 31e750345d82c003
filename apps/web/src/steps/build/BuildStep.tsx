import type { ReactNode } from "react";

export default function BuildStep(): ReactNode {
  return <h1>Build</h1>;
}
