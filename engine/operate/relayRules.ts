import type { PartOf } from "../job/index.ts";
import type { RelayRule } from "../network/index.ts";
import { figure } from "../tables/index.ts";
import { type JobElement, OPEN_OHM } from "./jobElement.ts";
import type { JobNodes } from "./jobNodes.ts";
import type { NetworkContext } from "./networkContext.ts";

/** What works a contact: the volts between two pins, from which it pulls and at which it lets go. */
interface Control {
  readonly pins: readonly [string, string];
  readonly pullInV: number;
  readonly dropOutV: number;
}

/** Everything whose contacts follow volts, in order of part id: relays by their coil, boxes by what feeds them. */
export function relayRules(
  context: NetworkContext,
  { indexOf }: JobNodes,
  elements: readonly JobElement[],
): readonly RelayRule[] {
  return context.parts.flatMap((part): RelayRule[] => {
    const control =
      part.kind === "relay"
        ? coilControl(part, context.job.supply.nominalV)
        : part.kind === "module"
          ? boxControl(part)
          : null;
    if (control === null) return [];
    const contacts = (when: "pulled" | "released"): readonly number[] =>
      elements.flatMap(({ role }, k) =>
        role.role === "relay" && role.part === part.id && role.closedWhen === when ? [k] : [],
      );
    const [closedWhenPulled, closedWhenReleased] = [contacts("pulled"), contacts("released")];
    const [coilA, coilB] = control.pins.map((pin) => indexOf.get(context.inside(part, pin))!);
    const contact = elements[closedWhenPulled[0] ?? closedWhenReleased[0] ?? -1]?.law;
    return [
      {
        id: part.id,
        coilA: coilA!,
        coilB: coilB!,
        pullInV: control.pullInV,
        dropOutV: control.dropOutV,
        closedWhenPulled,
        closedWhenReleased,
        closedOhm: contact?.kind === "ohm" ? contact.ohm : OPEN_OHM,
        openOhm: OPEN_OHM,
        held: false,
      },
    ];
  });
}

function coilControl({ coil }: PartOf<"relay">, nominalV: number): Control {
  const ratio = (row: string): number => figure("elementRules", row, "value").value;
  return {
    pins: coil.pins,
    pullInV: coil.pullInV?.value ?? nominalV * ratio("relay-pull-in"),
    dropOutV: coil.dropOutV?.value ?? nominalV * ratio("relay-drop-out"),
  };
}

/** A box conducts from the volts it works from, and stops below them: it has no hysteresis. */
function boxControl({ driver }: PartOf<"module">): Control | null {
  if (driver === undefined) return null;
  return { pins: driver.fed, pullInV: driver.fromV.value, dropOutV: driver.fromV.value };
}
