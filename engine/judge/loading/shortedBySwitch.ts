import type { Finding } from "../../messages/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Judge } from "../judge.ts";
import { operateCommand, stateOf } from "../stateArguments.ts";

/** Positions of the switches in which nothing stands between the battery's posts. */
export const shortedBySwitch: Judge = ({ job, worst }) => {
  const groups = new Map<string, (typeof worst.shorted)[number]>();
  for (const one of worst.shorted) {
    const key = [...one.contacts].sort().join(" ");
    const before = groups.get(key);
    if (before === undefined || one.currentA > before.currentA) groups.set(key, one);
  }
  // A contact that is enough by itself makes every larger set with it superfluous.
  const sets = [...groups.values()].sort((a, b) => a.contacts.length - b.contacts.length);
  const kept = sets.filter(
    (one, i) =>
      !sets
        .slice(0, i)
        .some((less) => less.contacts.every((contact) => one.contacts.includes(contact))),
  );
  return kept.map(({ state, currentA, contacts }): Finding => {
    const parts = [...new Set(contacts.map((contact) => contact.split(":")[0]!))].sort();
    return findingOf({
      code: parts.length === 0 ? "battery-dead-shorted" : "switch-shorts-feed",
      severity: "stop",
      subject: { kind: parts.length === 0 ? "supply" : "part", id: parts[0] ?? "supply" },
      also: [...parts.slice(1), ...contacts],
      state: stateOf(job, state),
      numbers: { currentA, contacts: contacts.join(", ") },
      reproduce: operateCommand(job, state),
    });
  });
};
