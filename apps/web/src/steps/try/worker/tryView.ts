import type { CheckedJob, OperateSolution, WireTemperature } from "@copperwright/engine";

export interface LampView {
  readonly part: string;
  readonly filament: string;
  readonly name: string;
  readonly station: string | null;
  /** Light over that at the lamp's test point, by the milder and the steeper published law. */
  readonly lightPercent: number;
  readonly lightLowPercent: number;
  /** Null: not told. */
  readonly v: number | null;
  readonly currentA: number;
  readonly powerW: number;
  readonly lit: boolean;
  readonly expected: boolean | null;
  readonly isAlternating: boolean;
  /** Nothing is known of it, and why. */
  readonly why: string | null;
}

export interface LoadView {
  readonly part: string;
  readonly element: string;
  readonly name: string;
  readonly v: number;
  readonly currentA: number;
  readonly works: boolean;
}

export interface WireView {
  readonly wire: string;
  readonly label: string;
  readonly currentA: number;
  readonly ohm: number | null;
  readonly dropV: number | null;
  readonly temperature: WireTemperature | null;
  readonly isAlternating: boolean;
  readonly why: string | null;
}

/** The most of anything in a run of the loom, and the wire it is in. */
export interface RunView {
  readonly run: string;
  readonly wires: readonly string[];
  readonly currentA: number;
  readonly currentWire: string;
  readonly dropV: number | null;
  readonly dropWire: string | null;
  readonly temperatureC: number | null;
  readonly temperatureWire: string | null;
}

/** One solved state as the bench shows it. */
export interface TryView {
  readonly lamps: readonly LampView[];
  readonly loads: readonly LoadView[];
  readonly wires: readonly WireView[];
  readonly runs: readonly RunView[];
  readonly fuses: OperateSolution["fuses"];
  readonly relays: readonly { readonly part: string; readonly pulled: boolean }[];
  readonly batteries: OperateSolution["batteries"];
  readonly supplies: OperateSolution["supplies"];
  /** What does not settle, strays, or depends on what was pressed first. */
  readonly notes: readonly string[];
  readonly converged: boolean;
}

type Solved = Omit<OperateSolution, "afterFuses" | "afterFusesByMin">;

export function viewOf(
  { design }: CheckedJob,
  solved: Solved,
  heat: readonly WireTemperature[] | null,
): TryView {
  const parts = new Map(design.job.parts.map((part) => [part.id, part]));
  const numbers = new Map(design.job.wires.map(({ id, number }) => [id, number ?? id]));
  const heatOf = new Map(heat?.map((row) => [row.wire, row]));
  const nameOf = (id: string): string => parts.get(id)?.name || id;
  const wires = solved.wires.map(
    (row): WireView => ({
      wire: row.wire,
      label: numbers.get(row.wire) ?? row.wire,
      currentA: row.currentA,
      ohm: row.ohm,
      dropV: row.dropV,
      temperature: heatOf.get(row.wire) ?? null,
      isAlternating: row.kind === "ac",
      why: row.why ?? null,
    }),
  );
  return {
    lamps: solved.lamps.map((row) => ({
      part: row.part,
      filament: row.filament,
      name: nameOf(row.part),
      station: parts.get(row.part)?.station ?? null,
      lightPercent: 100 * row.relativeLight,
      lightLowPercent: 100 * row.relativeLightLow,
      v: row.v,
      currentA: row.currentA,
      powerW: row.powerW,
      lit: row.lit,
      expected: row.expected,
      isAlternating: row.kind === "ac",
      why: row.why ?? null,
    })),
    loads: solved.loads.map(({ part, element, v, currentA, works }) => ({
      part,
      element,
      name: nameOf(part),
      v,
      currentA,
      works,
    })),
    wires,
    runs: runsOf(design, wires),
    fuses: solved.fuses,
    relays: solved.relays.map(({ part, pulled }) => ({ part, pulled })),
    batteries: solved.batteries,
    supplies: solved.supplies,
    notes: notesOf(solved),
    converged: solved.converged,
  };
}

function runsOf({ routed }: CheckedJob["design"], wires: readonly WireView[]): readonly RunView[] {
  const byId = new Map(wires.map((wire) => [wire.wire, wire]));
  const inRun = new Map<string, Set<string>>();
  for (const { run, wires: ids } of routed.stretches) {
    const known = inRun.get(run) ?? new Set();
    for (const id of ids) known.add(id);
    inRun.set(run, known);
  }
  return [...inRun].flatMap(([run, ids]): RunView[] => {
    const own = [...ids].flatMap((id) => byId.get(id) ?? []);
    if (own.length === 0) return [];
    const most = (of: (wire: WireView) => number): WireView =>
      own.reduce((high, one) => (of(one) > of(high) ? one : high));
    const current = most(({ currentA }) => Math.abs(currentA));
    const drop = most(({ dropV }) => Math.abs(dropV ?? 0));
    const hot = most(({ temperature }) => temperature?.temperatureC ?? -Infinity);
    return [
      {
        run,
        wires: own.map(({ wire }) => wire),
        currentA: Math.abs(current.currentA),
        currentWire: current.label,
        dropV: drop.dropV === null ? null : Math.abs(drop.dropV),
        dropWire: drop.dropV === null ? null : drop.label,
        temperatureC: hot.temperature?.temperatureC ?? null,
        temperatureWire: hot.temperature === null ? null : hot.label,
      },
    ];
  });
}

function notesOf({ strayLit, relays, whenHeld, converged, supplies }: Solved): readonly string[] {
  const buzzing = relays.filter((one) => one.buzzing).map(({ part }) => part);
  return [
    ...(converged ? [] : ["This state does not settle; its figures are not to be trusted."]),
    ...(strayLit.length > 0 ? [`Lit though nothing asks for it: ${strayLit.join(", ")}.`] : []),
    ...(buzzing.length > 0 ? [`Pulls and lets go for ever: ${buzzing.join(", ")}.`] : []),
    ...(whenHeld === null
      ? []
      : [
          `It depends on what was pressed first: with ${whenHeld.pulled.join(", ") || "no relay"} pulled it stays otherwise.`,
        ]),
    ...supplies.flatMap(({ part, why }) => (why === null ? [] : [`${part}: ${why}.`])),
  ];
}
