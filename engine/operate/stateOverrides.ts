import type { Job } from "../job/index.ts";
import type { BranchOverride, Law, RelayRule, Short } from "../network/index.ts";
import type { JobNetwork } from "./buildJobNetwork.ts";
import { OPEN } from "./jobElement.ts";
import type { EngineMode } from "./operateResult.ts";
import { EARTH, restPositions } from "./readState.ts";

/** A state by its differences from rest; everything absent is at rest, off, stopped or intact. */
export interface QuickState {
  readonly positions?: Readonly<Record<string, string>>;
  readonly engine?: { readonly mode: EngineMode; readonly speedRpm?: number };
  readonly flash?: "on" | "off";
  readonly held?: readonly string[];
  readonly open?: readonly string[];
  readonly short?: readonly { readonly a: string; readonly b: string; readonly ohm: number }[];
  readonly extraOhm?: Readonly<Record<string, number>>;
  /** An alternator that feeds its own field was running before: it goes on, whether or not anything would start it. */
  readonly excited?: boolean;
}

/** A state in the terms of the network. */
export interface NetworkState {
  readonly overrides: readonly BranchOverride[];
  readonly shorts: readonly Short[];
  readonly relays: readonly RelayRule[];
}

/** A contact worked by a switch, or by the flash (part null). */
interface Contact {
  readonly k: number;
  readonly part: string | null;
  readonly closedIn: ReadonlySet<string>;
}

/** Makes the translator from states to overrides; what does not change from state to state is looked up once. */
export function stateTranslator(
  job: Job,
  jobNetwork: JobNetwork,
): (state: QuickState) => NetworkState {
  const { elements, nodes, relays, earth } = jobNetwork;
  const rest = {
    stopped: restPositions(job, "stopped"),
    cranking: restPositions(job, "cranking"),
    running: restPositions(job, "running"),
  };
  const contacts = elements.flatMap(({ role }, k): Contact[] => {
    if (role.role === "switch") return [{ k, part: role.part, closedIn: new Set(role.closedIn) }];
    return role.role === "flasher" ? [{ k, part: null, closedIn: new Set() }] : [];
  });
  const node = (pin: string): number => nodes.indexOf.get(pin === EARTH ? earth! : pin)!;
  const released = relays.map((relay) => ({ ...relay, held: false }));
  const set = memorised((state) => {
    const atRest = rest[state.engine?.mode ?? "stopped"];
    return contacts.flatMap(({ k, part, closedIn }): BranchOverride[] => {
      const isClosed =
        part === null
          ? state.flash === "on"
          : closedIn.has(state.positions?.[part] ?? atRest[part]!);
      return isClosed ? [] : [{ branchIndex: k, law: OPEN }];
    });
  });
  return (state) => {
    const laws = new Map<number, Law>();
    const opened = damaged(jobNetwork, state, laws);
    const kept = (contact: number): boolean => !opened.has(contact);
    const isAsMade = opened.size === 0 && state.held === undefined;
    return {
      overrides: damagedOver(set(state), laws),
      shorts: (state.short ?? []).map(({ a, b, ohm }) => ({ a: node(a), b: node(b), ohm })),
      relays: isAsMade
        ? released
        : relays.map((relay) => ({
            ...relay,
            closedWhenPulled: relay.closedWhenPulled.filter(kept),
            closedWhenReleased: relay.closedWhenReleased.filter(kept),
            held: state.held?.includes(relay.id) ?? false,
          })),
    };
  };
}

type Contacts = (state: QuickState) => readonly BranchOverride[];

/** The answer for the switches of the state before: one state after another is asked with another fault. */
function memorised(find: Contacts): Contacts {
  let last: { readonly state: QuickState; readonly found: readonly BranchOverride[] } | null = null;
  return (state) => {
    const isSame =
      last !== null &&
      last.state.positions === state.positions &&
      last.state.flash === state.flash &&
      last.state.engine?.mode === state.engine?.mode;
    last = isSame ? last : { state, found: find(state) };
    return last!.found;
  };
}

/** Contacts that are open, and what is damaged besides; a damaged contact is told once. */
function damagedOver(
  set: readonly BranchOverride[],
  laws: ReadonlyMap<number, Law>,
): readonly BranchOverride[] {
  if (laws.size === 0) return set;
  const own = set.filter(({ branchIndex }) => !laws.has(branchIndex));
  return [...own, ...[...laws].map(([branchIndex, law]) => ({ branchIndex, law }))];
}

/** Writes opens and added resistances into `laws`; answers which elements are open. */
function damaged(
  jobNetwork: JobNetwork,
  state: QuickState,
  laws: Map<number, Law>,
): ReadonlySet<number> {
  for (const [name, ohm] of Object.entries(state.extraOhm ?? {})) {
    for (const k of jobNetwork.controlledBy.get(name) ?? []) {
      const { law } = jobNetwork.elements[k]!;
      if (law.kind !== "ohm") throw new Error(`${name} cannot take a resistance in series`);
      laws.set(k, { kind: "ohm", ohm: law.ohm + ohm });
    }
  }
  const opened = new Set((state.open ?? []).flatMap((name) => openedBy(jobNetwork, name)));
  for (const k of opened) laws.set(k, OPEN);
  return opened;
}

/**
 * Elements that do not conduct when a wire, pin, bond or fuse is open. A pin of a part where a single element of the part
 * ends needs no preparation: opening the pin is opening that element.
 */
function openedBy({ controlledBy, insideAt }: JobNetwork, name: string): readonly number[] {
  const own = controlledBy.get(name);
  if (own !== undefined) return own;
  const inside = insideAt.get(name) ?? [];
  if (inside.length > 1) throw new Error(`${name} must be named in takenApart to be opened`);
  return inside;
}
