import type { ReactNode } from "react";

export default function JobsStep(): ReactNode {
  return <h1>Jobs</h1>;
}
