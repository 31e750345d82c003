import type { ReactNode } from "react";

export default function SurveyStep(): ReactNode {
  return <h1>Survey</h1>;
}
