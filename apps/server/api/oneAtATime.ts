export type InTurn = <T>(name: string, work: () => Promise<T>) => Promise<T>;

/** Runs what is asked for one name one after the other; different names do not wait for each other. */
export function oneAtATime(): InTurn {
  const last = new Map<string, Promise<unknown>>();
  return (name, work) => {
    const before = last.get(name) ?? Promise.resolve();
    const now = before.then(work, work);
    const settled = now.then(
      () => {},
      () => {},
    );
    last.set(name, settled);
    void settled.then(() => {
      if (last.get(name) === settled) last.delete(name);
    });
    return now;
  };
}
