import type { ReactNode } from "react";

export default function LoomBoardStep(): ReactNode {
  return <h1>LoomBoard</h1>;
}
