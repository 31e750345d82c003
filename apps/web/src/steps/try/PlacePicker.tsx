import type { ReactNode } from "react";
import type { TryMachine } from "./worker/tryMachine.ts";

/** Any wire, fuse, earth or contact of the machine by name. */
export function PlacePicker({
  machine,
  place,
  onPlace,
}: {
  machine: TryMachine;
  place: string;
  onPlace: (place: string) => void;
}): ReactNode {
  const groups = [...new Set(machine.places.map(({ group }) => group))];
  return (
    <label className="entry">
      <span className="note">wire, fuse, earth or contact</span>
      <select className="field" value={place} onChange={(event) => onPlace(event.target.value)}>
        <option value="">choose</option>
        <optgroup label="Wires">
          {machine.wires.map(({ id, label, from, to }) => (
            <option key={id} value={id}>
              {label}: {from} to {to}
            </option>
          ))}
        </optgroup>
        {groups.map((group) => (
          <optgroup key={group} label={group}>
            {machine.places
              .filter((one) => one.group === group)
              .map(({ ref, label }) => (
                <option key={ref} value={ref}>
                  {label}
                </option>
              ))}
          </optgroup>
        ))}
      </select>
    </label>
  );
}
