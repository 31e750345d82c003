import type { ReactNode } from "react";
import { Slip } from "../../frame/Slip.tsx";
import { putLead, useTry } from "./tryStore.ts";
import type { TryMachine } from "./worker/tryMachine.ts";

/** The pins at the station a lead was let go over: one tap puts it down. */
export function PinOffer({ machine }: { machine: TryMachine }): ReactNode {
  const offer = useTry((bench) => bench.offer);
  if (offer === null) return null;
  const owners = machine.owners.filter(({ station }) => station === offer.station);
  return (
    <Slip
      title={`${offer.lead} lead: on which pin?`}
      label="Pins at this station"
      onClose={() => useTry.setState({ offer: null })}
    >
      {owners.length === 0 && <p className="note">Nothing has a pin here.</p>}
      {owners.map(({ owner, label, pins }) => (
        <div key={owner} className="try-offer">
          <span className="note">
            {label} ({owner})
          </span>
          <div className="try-offer-pins">
            {pins.map(({ ref, label: word }) => (
              <button
                key={ref}
                type="button"
                className="act"
                onClick={() => putLead(offer.lead, ref)}
              >
                {word}
              </button>
            ))}
          </div>
        </div>
      ))}
    </Slip>
  );
}
