/**
 * A question asked again while the same question is under way gets that answer: two hundred devices that ask what is new since the same moment
 * cost one look. What came after the look began is in the next.
 */
export function sharedWhileUnderWay<T>(
  ask: (since: number) => Promise<T>,
): (since: number) => Promise<T> {
  const underWay = new Map<number, Promise<T>>();
  return (since) => {
    const same = underWay.get(since);
    if (same !== undefined) return same;
    const answer = ask(since).finally(() => underWay.delete(since));
    underWay.set(since, answer);
    return answer;
  };
}
