const MONTH_DAYS = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31] as const;

/** True when a YYYY-MM-DD is a day of the Gregorian calendar. Text of any other form is left to the form's own check. */
export function isCalendarDate(text: string): boolean {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(text);
  if (match === null) return true;
  const [year, month, day] = match.slice(1).map(Number) as [number, number, number];
  const isLeap = (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;
  const days = month === 2 && isLeap ? 29 : MONTH_DAYS[month - 1];
  return days !== undefined && day >= 1 && day <= days;
}
