/** Seconds an hour, exactly. */
export const SECONDS_AN_HOUR = 3600;
