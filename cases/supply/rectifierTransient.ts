import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** An alternator with magnets, three phases in star or one winding: peak volts of a phase and electrical frequency go with speed. */
export const ALTERNATOR = {
  peakVPerRpm: 0.0047,
  polePairs: 6,
  phaseOhm: 0.1,
  phaseH: 0.0003,
} as const;

/** What stands behind the rectifier: a battery with its resistance, loads, and perhaps a shunt regulator. */
export interface Behind {
  readonly emfV: number;
  readonly internalOhm: number;
  readonly loadOhm: number;
  /** Volts above which the phases are shorted; null: no regulator. */
  readonly setV: number | null;
  /** Absent: three. */
  readonly phaseCount?: 1 | 3;
}

export interface Transient {
  /** Mean into battery and loads, A. */
  readonly outputA: number;
  /** Mean at the battery posts. */
  readonly outputV: number;
  /** Of one phase, A rms. */
  readonly phaseA: number;
}

/** Periods that are let pass, and that are measured. */
const SETTLING_PERIODS = 60;
const MEASURED_PERIODS = 40;
const STEPS_A_PERIOD = 400;

/** The circuit switched diode by diode by the circuit simulator: means and rms over whole periods. */
export function transient(speedRpm: number, behind: Behind): Transient {
  const text = circuitText(speedRpm, behind);
  const folder = mkdtempSync(join(tmpdir(), "transient-"));
  const path = join(folder, "rectifier.cir");
  try {
    writeFileSync(path, text);
    const out = execFileSync("ngspice", ["-b", path], { encoding: "utf8", stdio: "pipe" });
    const figure = (name: string): number => {
      const found = new RegExp(`^${name}\\s*=\\s*(\\S+)`, "m").exec(out);
      if (found === null) throw new Error(`the simulator gave no ${name}: ${out.slice(-400)}`);
      return Number(found[1]);
    };
    return { outputA: figure("meana"), outputV: figure("meanv"), phaseA: figure("rmsa") };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function circuitText(
  speedRpm: number,
  { emfV, internalOhm, loadOhm, setV, phaseCount = 3 }: Behind,
): string {
  const { peakVPerRpm, polePairs, phaseOhm, phaseH } = ALTERNATOR;
  const hertz = (speedRpm / 60) * polePairs;
  const endS = (SETTLING_PERIODS + MEASURED_PERIODS) / hertz;
  const fromS = SETTLING_PERIODS / hertz;
  const stepS = 1 / hertz / STEPS_A_PERIOD;
  // One winding: the bridge's other two diodes stand at its far end.
  const farEnd = phaseCount === 1 ? ["DU4 s raw D", "DL4 0 s D"] : [];
  const phases = [1, 2, 3]
    .slice(0, phaseCount)
    .flatMap((k) => [
      `V${k} e${k} s SIN(0 ${peakVPerRpm * speedRpm} ${hertz} 0 0 ${120 * (k - 1)})`,
      `R${k} e${k} a${k} ${phaseOhm}`,
      `L${k} a${k} p${k} ${phaseH}`,
      `DU${k} p${k} raw D`,
      `DL${k} 0 p${k} D`,
      ...(setV === null ? [] : [`S${k} p${k} 0 sensed 0 SH`]),
    ]);
  return [
    "alternator, rectifier, battery, shunt regulator",
    ...phases,
    ...farEnd,
    "RSTAR s 0 1e6",
    ".model D D(IS=1e-9 N=1.8 RS=0.005)",
    ...(setV === null
      ? []
      : [
          `.model SH SW(VT=${setV} VH=0.05 RON=0.01 ROFF=1e5)`,
          "RS1 out sensed 1k",
          "CS1 sensed 0 1u",
        ]),
    "VM raw out 0",
    `RB out b ${internalOhm}`,
    `VB b 0 ${emfV}`,
    `RL out 0 ${loadOhm}`,
    `.tran ${stepS} ${endS} ${fromS} ${stepS}`,
    ".control",
    "run",
    `meas tran meana AVG i(VM) from=${fromS} to=${endS}`,
    `meas tran meanv AVG v(out) from=${fromS} to=${endS}`,
    `meas tran rmsa RMS i(L1) from=${fromS} to=${endS}`,
    "quit 0",
    ".endc",
    ".end",
    "",
  ].join("\n");
}
