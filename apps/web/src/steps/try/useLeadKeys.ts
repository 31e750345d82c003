import { useEffect } from "react";
import { type ShortcutName, shortcutOf } from "../../frame/shortcuts.ts";
import { say, useBench } from "../../store/benchStore.ts";
import { type Lead, putLead, useTry } from "./tryStore.ts";
import type { TryMachine } from "./worker/tryMachine.ts";

const LEADS: Readonly<Partial<Record<ShortcutName, Lead>>> = {
  "red-lead": "red",
  "black-lead": "black",
};

/** A key each puts a lead on what is chosen: a pin at once, anything else by the pins it has; a third stops and starts the flasher. */
export function useLeadKeys(machine: TryMachine | null): void {
  useEffect(() => {
    const press = (event: KeyboardEvent): void => {
      const name = machine === null ? null : shortcutOf(event);
      if (name === null || machine === null) return;
      if (name === "flasher") {
        useTry.setState(({ isFlashing }) => ({ isFlashing: !isFlashing }));
        return;
      }
      const lead = LEADS[name];
      if (lead !== undefined) putOnChosen(lead, machine);
    };
    addEventListener("keydown", press);
    return () => removeEventListener("keydown", press);
  }, [machine]);
}

function putOnChosen(lead: Lead, { owners, wires }: TryMachine): void {
  const { chosen } = useBench.getState();
  if (chosen === null) {
    say(
      `Choose a pin, a part, a wire or a station first; then the key of the ${lead} lead puts it there.`,
    );
    return;
  }
  const { id } = chosen;
  const wire = wires.find((one) => one.id === id);
  const owner = owners.find((one) => one.owner === id);
  const isPin = owners.some(({ pins }) => pins.some(({ ref }) => ref === id));
  const only = owner?.pins.length === 1 ? owner.pins[0]!.ref : null;
  const end = wire === undefined ? null : lead === "red" ? wire.from : wire.to;
  const pin = end ?? (isPin ? id : only);
  const station = owner?.station ?? (chosen.kind === "station" ? id : null);
  if (pin !== null) putLead(lead, pin);
  else if (station === null) say(`${id} has no pin a lead could be put on.`);
  else useTry.setState({ offer: { lead, station } });
}
