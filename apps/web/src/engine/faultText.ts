/** What went wrong, in the words of whoever found it. */
export const faultText = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);
