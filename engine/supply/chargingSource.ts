import { batteryOf, type Job, type PartOf } from "../job/index.ts";
import {
  type CompiledJob,
  type GeneratorLine,
  generatorCurrentA,
  kneeV,
  openCircuitV,
} from "../operate/index.ts";
import { supplyRule } from "./supplyRule.ts";

/** A charging source as the battery posts see it in one lighting state. */
export interface ChargingSource {
  readonly generator: string;
  readonly regulator: string | null;
  readonly type: PartOf<"generator">["type"];
  /** With the charge lead's resistance counted into the winding's; null: output not known at two speeds. */
  readonly line: GeneratorLine | null;
  /** The winding alone. */
  readonly bareLine: GeneratorLine | null;
  readonly why: string | null;
  /** Volts at the battery posts at which the regulator gives nothing more; null: unregulated. */
  readonly heldV: number | null;
  /** Volts there from which it holds back. */
  readonly kneeV: number | null;
  readonly setV: number | null;
  /** From the source's terminals to the battery posts, Ω, measured by solving the machine. */
  readonly leadOhm: number;
  readonly cutInV: number | null;
  readonly isShunt: boolean;
  readonly phaseRatio: number | null;
  readonly ratedW: number | null;
  /** Speed of its fastest output point, rpm; null: none. */
  readonly fastestRpm: number | null;
  /** Least current of its output points, A; null: none. */
  readonly lowestA: number | null;
  /** Share its output may differ by: the worst basis of its points. */
  readonly bandRatio: number;
}

/**
 * The sources of a job in a lighting state.
 *
 * @param positions  of every switch, brake and indicators on as the job at its means has them.
 * @param held  the job at its means, laid out with a battery that stands at the set volts and hardly takes any current: what its posts stand
 *              at is what the regulator holds them at, drops of the sense wire and the charge lead included.
 */
export function chargingSources(
  held: CompiledJob,
  positions: Readonly<Record<string, string>>,
): readonly ChargingSource[] {
  const { job, jobNetwork } = held;
  const speedRpm = Math.max(
    0,
    ...jobNetwork.sources.map(({ generator }) => fastestOf(job, generator) ?? 0),
  );
  const solution =
    speedRpm === 0
      ? null
      : held.solve({ positions, flash: "on", engine: { mode: "running", speedRpm } });
  const postsV = solution === null ? null : postVolts(held, solution.nodeV);
  return jobNetwork.sources.map((source, k) => {
    const row = solution?.converged ? solution.supplies.rows[k] : undefined;
    const gives = row !== undefined && row.currentA > LEAST_A && postsV !== null;
    const leadOhm = gives ? Math.max(0, (row.outputV - postsV) / row.currentA) : 0;
    const { line } = source;
    const heldV = source.setV === null ? null : gives && row.regulating ? postsV : source.setV;
    const generator = job.parts.find((part) => part.id === source.generator) as PartOf<"generator">;
    return {
      generator: source.generator,
      regulator: source.regulator,
      type: generator.type,
      line: line === null ? null : { ...line, windingOhm: line.windingOhm + leadOhm },
      bareLine: line,
      why: source.why,
      heldV,
      kneeV: heldV === null ? null : kneeV(heldV),
      setV: source.setV,
      leadOhm,
      cutInV: source.cutInV,
      isShunt: source.isShunt,
      phaseRatio: source.phaseRatio,
      ratedW: generator.ratedW ?? null,
      fastestRpm: fastestOf(job, source.generator),
      lowestA: lowestOf(generator),
      bandRatio: bandOf(generator),
    };
  });
}

/** Under this a source is taken as giving nothing when the lead's resistance is measured, A. */
const LEAST_A = 0.05;

function postVolts({ job, jobNetwork }: CompiledJob, nodeV: Float64Array): number | null {
  const posts = batteryOf(job);
  if (posts === null) return null;
  const at = (ref: string): number => nodeV[jobNetwork.nodes.indexOf.get(ref)!]!;
  return Math.abs(at(posts.livePost) - at(posts.earthedPost));
}

function pointsOf(generator: PartOf<"generator">) {
  return generator.windings
    .filter(({ use }) => use !== "lighting" && use !== "ignition" && use !== "pickup")
    .flatMap(({ points }) => points ?? []);
}

function fastestOf(job: Job, id: string): number | null {
  const generator = job.parts.find((part) => part.id === id) as PartOf<"generator">;
  const speeds = pointsOf(generator).map(({ speedRpm }) => speedRpm);
  return speeds.length === 0 ? null : Math.max(...speeds);
}

function lowestOf(generator: PartOf<"generator">): number | null {
  const currents = pointsOf(generator).map(({ currentA }) => currentA);
  return currents.length === 0 ? null : Math.min(...currents);
}

function bandOf(generator: PartOf<"generator">): number {
  const bands = pointsOf(generator).map(({ basis }) =>
    supplyRule(
      basis === "measured"
        ? "point-measured"
        : basis === "stated"
          ? "point-stated"
          : "point-estimated",
    ),
  );
  return Math.max(0, ...bands);
}

/** What the source could give into v volts at the battery posts without its regulator, A; 0 under cut-in speed or cut-out volts. */
export function availableA(source: ChargingSource, speedRpm: number, v: number): number {
  const { line, cutInV, heldV } = source;
  if (line === null || speedRpm <= 0) return 0;
  const openV = openCircuitV(line, speedRpm);
  if (cutInV !== null && Math.min(openV, heldV ?? openV) < cutInV) return 0;
  return generatorCurrentA(line, speedRpm, Math.max(0, v));
}

/** What it gives with its regulator: the ellipse up to the band below the held volts, a straight line to nothing at them. */
export function givenA(source: ChargingSource, speedRpm: number, v: number): number {
  const { heldV, kneeV: fromV } = source;
  if (heldV === null || fromV === null || v <= fromV) return availableA(source, speedRpm, v);
  if (v >= heldV) return 0;
  return (availableA(source, speedRpm, fromV) * (heldV - v)) / (heldV - fromV);
}
