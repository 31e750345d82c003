/** Every step that shows a job, in order. */
export const JOB_STEPS = [
  "survey",
  "circuits",
  "try",
  "proof",
  "loom",
  "loomBoard",
  "parts",
  "build",
  "test",
  "papers",
] as const;

/** Desk, small screen and phone, px. */
export const SCREENS = [
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
  { width: 390, height: 844 },
] as const;
