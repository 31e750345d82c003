import { fingerprint, type Job } from "../job/index.ts";
import type { Refusal } from "../messages/index.ts";
import type { RelayRule } from "../network/index.ts";
import type { Conductors } from "../route/index.ts";
import type { BothSolutions, CompiledJob } from "./compileJob.ts";
import { deviceId, lawsAsSolved, leakId } from "./elementRows.ts";
import { OPEN_OHM } from "./jobElement.ts";
import { nodeLabel } from "./jobNodes.ts";
import { prepare } from "./operateJob.ts";
import type { OperateRequest, OperateState } from "./operateResult.ts";
import { JUNCTION_C } from "./physicalConstants.ts";
import { spiceElement, spiceNumber, voltage } from "./spiceElement.ts";

/** `settled`: contacts as our own solution left them. `live`: the simulator works the relays itself. */
export type SpiceRelays = "settled" | "live";

export type Spice =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };

/** The same network as operateJob solves, as text for a general circuit simulator (see docs/reference/contract). */
export function spiceText(
  job: Job,
  conductors: Conductors,
  request: OperateRequest,
  options: { readonly relays?: SpiceRelays } = {},
): Spice {
  const prepared = prepare(job, conductors, request);
  if (!prepared.ok) return prepared;
  return {
    ok: true,
    text: spiceOf(prepared.compiled, prepared.state, options.relays ?? "settled"),
  };
}

/** Characters of state on one comment line. */
const STATE_LINE_COUNT = 200;

/** As `spiceText`, for a job already laid out. */
export function spiceOf(compiled: CompiledJob, state: OperateState, relays: SpiceRelays): string {
  const both = compiled.solveBoth(state);
  const { jobNetwork, job } = compiled;
  const devices = deviceLines(compiled, both, relays);
  const json = JSON.stringify(state);
  const stateLines = Array.from(
    { length: Math.ceil(json.length / STATE_LINE_COUNT) },
    (_, k) => `*@state ${json.slice(k * STATE_LINE_COUNT, (k + 1) * STATE_LINE_COUNT)}`,
  );
  const pins = jobNetwork.nodes.names
    .map((pin, node) => ({ pin, node }))
    .filter(({ pin }) => !pin.endsWith("~"))
    .sort((a, b) => (a.pin < b.pin ? -1 : 1))
    .map(({ pin, node }) => `*@pin ${pin} ${nodeLabel(node)}`);
  return [
    `* copperwright spice 1, job ${fingerprint(job)}, state on the *@state lines`,
    ...stateLines,
    ...pins,
    ...devices.flatMap(({ comment }) => comment),
    ...devices.flatMap(({ lines }) => lines),
    `.options temp=${JUNCTION_C} tnom=${JUNCTION_C}`,
    ".options reltol=1e-10 abstol=1e-13 vntol=1e-10 gmin=1e-12",
    ".control",
    "set numdgt=14",
    "op",
    "print all",
    "quit",
    ".endc",
    ".end",
    "",
  ].join("\n");
}

interface Device {
  readonly comment: readonly string[];
  readonly lines: readonly string[];
}

const element = (id: string, kind: string, of: string, nodes: readonly [number, number]): string =>
  `*@element ${id} ${kind} ${of} ${nodes.map(nodeLabel).join(" ")}`;

function deviceLines(
  compiled: CompiledJob,
  both: BothSolutions,
  relays: SpiceRelays,
): readonly Device[] {
  const { jobNetwork } = compiled;
  const { networkState, fromReleased } = both;
  const laws = lawsAsSolved(jobNetwork, networkState, fromReleased.pulled);
  const live =
    relays === "live" ? liveContacts(networkState.relays) : new Map<number, LiveContact>();
  const own = jobNetwork.elements.map(({ id, kind, of, nodes }, k): Device => {
    const contact = live.get(k);
    const name = contact === undefined ? deviceId(id, laws[k]!) : `S${id.slice(1)}`;
    const lines =
      contact === undefined
        ? spiceElement(name, nodes, laws[k]!)
        : [`${name} ${nodes.map(nodeLabel).join(" ")} ${contact.control}`];
    return { comment: [element(name, kind, of, nodes)], lines };
  });
  const shorts = networkState.shorts.map(({ a, b, ohm }, k): Device => {
    const id = `R${jobNetwork.elements.length + k + 1}`;
    const of = `${jobNetwork.nodes.names[a]}=${jobNetwork.nodes.names[b]}`;
    return {
      comment: [element(id, "short", of, [a, b])],
      lines: spiceElement(id, [a, b], { kind: "ohm", ohm }),
    };
  });
  const leaks = jobNetwork.nodes.names.slice(1).map((name, k): Device => {
    const id = leakId(k + 1);
    return {
      comment: [element(id, "leak", name, [k + 1, 0])],
      lines: [`${id} ${nodeLabel(k + 1)} 0 ${spiceNumber(OPEN_OHM)}`],
    };
  });
  const coils = relays === "live" ? networkState.relays.map(coilDevice) : [];
  return [...own, ...shorts, ...leaks, ...coils];
}

interface LiveContact {
  /** Control nodes, model and start of the simulator's switch. */
  readonly control: string;
}

/** Contacts the simulator works itself, by element. A contact that rests closed is controlled by the coil turned round. */
function liveContacts(relays: readonly RelayRule[]): ReadonlyMap<number, LiveContact> {
  const found = new Map<number, LiveContact>();
  relays.forEach((relay, r) => {
    const [made, rest] = relay.held ? ["ON", "OFF"] : ["OFF", "ON"];
    for (const k of relay.closedWhenPulled) found.set(k, { control: `c${r} 0 pull${r} ${made}` });
    for (const k of relay.closedWhenReleased) found.set(k, { control: `0 c${r} rest${r} ${rest}` });
  });
  return found;
}

/** |coil volts| on a control node, and the two models with the relay's hysteresis: on above pull, off below drop. */
function coilDevice(relay: RelayRule, r: number): Device {
  const { pullInV, dropOutV, closedOhm, openOhm } = relay;
  const coil = voltage(nodeLabel(relay.coilA), nodeLabel(relay.coilB));
  const middle = spiceNumber((pullInV + dropOutV) / 2);
  const half = spiceNumber((pullInV - dropOutV) / 2);
  const ohms = `ron=${spiceNumber(closedOhm)} roff=${spiceNumber(openOhm)}`;
  return {
    comment: [`*@relay ${relay.id} c${r} pull-in ${pullInV} drop-out ${dropOutV}`],
    lines: [
      `Bc${r} c${r} 0 V=abs(${coil})`,
      `.model pull${r} sw vt=${middle} vh=${half} ${ohms}`,
      `.model rest${r} sw vt=-${middle} vh=${half} ${ohms}`,
    ],
  };
}
