import { batteryOf, HUB, type Job, pinsOf, presentParts, presentWires } from "../job/index.ts";
import type { Refusal } from "../messages/index.ts";
import { figure } from "../tables/index.ts";
import { batterySource } from "./batterySource.ts";
import type { Conditions } from "./networkContext.ts";
import type { OperateRequest, OperateState } from "./operateResult.ts";
import { stateRefusal } from "./stateRefusal.ts";

/** Engine speed where the engine runs and nobody says how fast, rpm. */
export const RUNNING_RPM = 3000;
/** A dead short: two bare conductors pressed together, Ω. */
export const DEAD_SHORT_OHM = 0.001;
/** Air round battery and regulator where neither request nor job says, °C: the temperature their figures are stated at. */
export const STANDARD_AMBIENT_C = 25;
/** Copper temperature where the request does not say, °C: the temperature resistances are published at. */
export const STANDARD_CONDUCTOR_C = 20;
/** How `short` writes the main body. */
export const EARTH = "earth";

/** Bounds of what is worked with: beyond them a number is a slip of the pen. */
const BATTERY_V_MAX = 60;
const ENGINE_RPM_MAX = 30_000;
const LAMP_EXPONENT_MAX = 2;

/** Position of every switch at rest, or following the engine. */
export function restPositions(
  job: Job,
  mode: OperateState["engine"]["mode"],
): Record<string, string> {
  const switches = presentParts(job).filter((part) => part.kind === "switch");
  return Object.fromEntries(
    switches
      .sort((a, b) => (a.id < b.id ? -1 : 1))
      .map((part) => [part.id, part.follows?.[mode] ?? part.rest]),
  );
}

/** What of a request holds for the whole network, not for one state of its switches. */
export function conditionsOf(job: Job, request: OperateRequest): Conditions {
  return {
    aged: request.aged ?? false,
    lampExponent: request.lampExponent ?? figure("lampLaws", "current-exponent", "value").value,
    conductorC: request.conductorC ?? STANDARD_CONDUCTOR_C,
    ambientC: request.ambientC ?? job.decisions.ambientC?.value ?? STANDARD_AMBIENT_C,
    battery: request.battery ?? "full",
  };
}

/** A request with every default filled in, or all that is wrong with it. */
export function readState(
  job: Job,
  request: OperateRequest,
):
  | { readonly ok: true; readonly state: OperateState }
  | { readonly ok: false; readonly refusals: readonly Refusal[] } {
  const refusals = [
    ...wrongPositions(job, request),
    ...wrongRelays(job, request),
    ...wrongPlaces(job, request),
    ...wrongShorts(job, request),
    ...wrongNumbers(request),
  ];
  if (refusals.length > 0) return { ok: false, refusals };
  const mode = request.engine?.mode ?? "stopped";
  const conditions = conditionsOf(job, request);
  const battery = batteryOf(job)?.battery;
  return {
    ok: true,
    state: {
      positions: { ...restPositions(job, mode), ...request.set },
      engine: {
        mode,
        speedRpm: mode === "running" ? (request.engine?.speedRpm ?? RUNNING_RPM) : 0,
      },
      flash: request.flash ?? "off",
      held: [...(request.held ?? [])].sort(),
      battery:
        battery === undefined
          ? { label: "none", emfV: 0, internalOhm: 0 }
          : batterySource(battery, conditions.battery, conditions.ambientC),
      ambientC: conditions.ambientC,
      conductorC: conditions.conductorC,
      open: [...new Set(request.open ?? [])].sort(),
      short: (request.short ?? []).map(({ a, b, ohm }) => ({
        a,
        b: b ?? EARTH,
        ohm: ohm ?? DEAD_SHORT_OHM,
      })),
      extraOhm: { ...request.extraOhm },
      lampExponent: conditions.lampExponent,
      aged: conditions.aged,
    },
  };
}

function wrongPositions(job: Job, request: OperateRequest): readonly Refusal[] {
  const switches = presentParts(job).filter((part) => part.kind === "switch");
  return Object.entries(request.set ?? {}).flatMap(([name, position]) => {
    const pointer = `--set ${name}=${position}`;
    const part = switches.find((one) => one.id === name);
    if (part === undefined) {
      const known = switches.map((one) => one.id);
      return [stateRefusal("state-unknown-switch", { pointer, found: name }, known)];
    }
    const positions = part.positions.map((one) => one.id);
    return positions.includes(position)
      ? []
      : [stateRefusal("state-unknown-position", { pointer, found: position }, positions)];
  });
}

function wrongRelays(job: Job, request: OperateRequest): readonly Refusal[] {
  const relays = presentParts(job)
    .filter((part) => part.kind === "relay")
    .map((part) => part.id);
  return (request.held ?? [])
    .filter((name) => !relays.includes(name))
    .map((found) =>
      stateRefusal("state-unknown-relay", { pointer: `--held ${found}`, found }, relays),
    );
}

function wrongPlaces(job: Job, request: OperateRequest): readonly Refusal[] {
  const pins = pinsOf(job);
  const known = new Set([
    ...pins.keys(),
    ...presentWires(job).map((wire) => wire.id),
    ...job.bonds.map((bond) => bond.id),
    ...presentParts(job).flatMap((part) => (part.kind === "fuse" ? [part.id] : [])),
  ]);
  const names = [
    ...(request.open ?? []).map((found) => ({ pointer: `--open ${found}`, found })),
    ...Object.keys(request.extraOhm ?? {}).map((found) => ({ pointer: `--ohm ${found}`, found })),
  ];
  return names.flatMap((place) => {
    if (!known.has(place.found)) return [stateRefusal("state-unknown-place", place, [...known])];
    const pin = pins.get(place.found);
    return pin?.ownerKind === "body" && pin.pinId === HUB
      ? [stateRefusal("state-hub-cannot-open", place, [], "Open its points or its bonds instead.")]
      : [];
  });
}

function wrongShorts(job: Job, request: OperateRequest): readonly Refusal[] {
  const pins = pinsOf(job);
  return (request.short ?? []).flatMap(({ a, b = EARTH }) => {
    const pointer = `--short ${a}=${b}`;
    const unknown = [a, b]
      .filter((pin) => pin !== EARTH && !pins.has(pin))
      .map((found) => stateRefusal("state-unknown-pin", { pointer, found }, [...pins.keys()]));
    const noBody =
      [a, b].includes(EARTH) && job.bodies.length === 0
        ? [stateRefusal("state-no-body", { pointer, found: EARTH }, [], "Name a pin instead.")]
        : [];
    const itself =
      a === b
        ? [stateRefusal("state-short-on-itself", { pointer, found: a }, [], "Name two pins.")]
        : [];
    return [...unknown, ...noBody, ...itself];
  });
}

function wrongNumbers(request: OperateRequest): readonly Refusal[] {
  const above0 = (value: number): boolean => Number.isFinite(value) && value > 0;
  const { battery } = request;
  const stated = typeof battery === "object" ? battery : undefined;
  const wrong: (readonly [pointer: string, value: number | undefined, isRight: boolean])[] = [
    ...(request.short ?? []).map(
      ({ a, ohm }) => [`--short ${a}`, ohm, ohm === undefined || above0(ohm)] as const,
    ),
    ...Object.entries(request.extraOhm ?? {}).map(
      ([name, ohm]) => [`--ohm ${name}`, ohm, above0(ohm)] as const,
    ),
    [
      "--lamp-exponent",
      request.lampExponent,
      above0(request.lampExponent ?? 1) && (request.lampExponent ?? 1) <= LAMP_EXPONENT_MAX,
    ],
    ["--battery", stated?.emfV, inRange(stated?.emfV ?? 0, 0, BATTERY_V_MAX)],
    ["--battery", stated?.internalOhm, above0(stated?.internalOhm ?? 1)],
    ["--ambient", request.ambientC, inRange(request.ambientC ?? 0, -60, 150)],
    ["--conductor", request.conductorC, inRange(request.conductorC ?? 0, -60, 300)],
    [
      "--engine",
      request.engine?.speedRpm,
      inRange(request.engine?.speedRpm ?? 0, 0, ENGINE_RPM_MAX),
    ],
  ];
  return wrong
    .filter(([, , isRight]) => !isRight)
    .map(([pointer, value]) =>
      stateRefusal(
        "state-number",
        { pointer, found: String(value) },
        [],
        "Give a finite number in the range of things that exist.",
      ),
    );
}

function inRange(value: number, least: number, most: number): boolean {
  return value >= least && value <= most;
}
