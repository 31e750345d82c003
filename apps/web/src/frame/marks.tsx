import type { ReactNode } from "react";

/** The only three pictures among the controls; everything else is a word. */
export function UndoArrow(): ReactNode {
  return (
    <svg
      viewBox="0 0 24 24"
      width="28"
      height="28"
      aria-hidden="true"
      fill="none"
      stroke="currentColor"
      strokeWidth="2"
    >
      <path d="M10 5 4 11l6 6M4 11h10a6 6 0 0 1 6 6v2" />
    </svg>
  );
}

export function Ear(): ReactNode {
  return (
    <svg
      viewBox="0 0 24 24"
      width="28"
      height="28"
      aria-hidden="true"
      fill="none"
      stroke="currentColor"
      strokeWidth="2"
    >
      <path d="M3 9h4l6-5v16l-6-5H3zM16.5 8.5a5 5 0 0 1 0 7M19 5.5a9 9 0 0 1 0 13" />
    </svg>
  );
}

export function Tick(): ReactNode {
  return (
    <svg
      viewBox="0 0 24 24"
      width="100%"
      height="100%"
      aria-hidden="true"
      fill="none"
      stroke="currentColor"
      strokeWidth="3.5"
    >
      <path d="m4 12 5.5 6L20 5" />
    </svg>
  );
}
