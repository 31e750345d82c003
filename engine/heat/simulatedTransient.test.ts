import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { follow, heatCapacityJPerMK, heatMaterials, lossTable, wireInAirPath } from "./index.ts";

/**
 * The same lump written out as a circuit for a general simulator: volts are °C, amperes are W per metre. The balance
 * is spelt out again there, with no table and no closed form, so the two share nothing but the equations.
 */
const pvc = heatMaterials("pvc");

interface Case {
  readonly areaMm2: number;
  readonly ohmPerM20: number;
  readonly conductorDiameterMm: number;
  readonly outerDiameterMm: number;
  readonly currentA: number;
  readonly ambientC: number;
  readonly startC: number;
  readonly endS: number;
}

const cases: readonly Case[] = [
  {
    areaMm2: 1.005,
    ohmPerM20: 0.0185,
    conductorDiameterMm: 1.3,
    outerDiameterMm: 2,
    currentA: 20,
    ambientC: 25,
    startC: 25,
    endS: 120,
  },
  {
    areaMm2: 0.503,
    ohmPerM20: 0.0371,
    conductorDiameterMm: 1,
    outerDiameterMm: 1.6,
    currentA: 22,
    ambientC: 60,
    startC: 80,
    endS: 20,
  },
  {
    areaMm2: 5.94,
    ohmPerM20: 0.00314,
    conductorDiameterMm: 3.2,
    outerDiameterMm: 4.3,
    currentA: 70,
    ambientC: 40,
    startC: 40,
    endS: 400,
  },
  {
    areaMm2: 1.979,
    ohmPerM20: 0.00942,
    conductorDiameterMm: 1.9,
    outerDiameterMm: 2.7,
    currentA: 0,
    ambientC: 20,
    startC: 140,
    endS: 200,
  },
];

function circuit(wire: Case, capacityJPerMK: number): string {
  const { air, conductor, insulation } = pvc;
  const wallKMPerW =
    Math.log(wire.outerDiameterMm / wire.conductorDiameterMm) /
    (2 * Math.PI * insulation.conductivityWPerMK);
  const diameterM = wire.outerDiameterMm / 1000;
  const madeWPerM20 = wire.currentA ** 2 * wire.ohmPerM20;
  const rise = `(v(s)-${wire.ambientC})`;
  // Written out in v(s) alone: with a node for each the simulator begins by dividing by nil.
  const film = `((max(v(s),-100)+${wire.ambientC})/2+273.15)`;
  const viscosity = `(${air.viscosityPaSPerRootK}*(${film}^1.5)/(${film}+${air.viscosityOffsetK}))`;
  const decay = `exp(-2.302585092994046*${air.conductivityDecayK}/${film})`;
  const conductivity = `(${air.conductivityWPerMPerKRootK}*(${film}^1.5)/(${film}+${air.conductivityOffsetK}*${decay}))`;
  const prandtl = `(${air.heatCapacityJPerKgK}*${viscosity}/${conductivity})`;
  const density = `(${air.pressurePa}/(${air.gasConstantJPerKgK}*${film}))`;
  const rayleigh = `(1e-9+9.80665*abs(${rise})*${diameterM ** 3}*${density}*${density}*${prandtl}/(${film}*${viscosity}*${viscosity}))`;
  const nusselt = `((0.6+0.387*(${rayleigh}^(1/6))/((1+(0.559/${prandtl})^(9/16))^(8/27)))^2)`;
  const radiated = `(${insulation.emissivityRatio}*5.670374419e-8*((v(s)+273.15)^4-${(wire.ambientC + 273.15) ** 4}))`;
  return [
    "* one wire in still air",
    `C1 c 0 ${capacityJPerMK} ic=${wire.startC}`,
    `B1 0 c I=${madeWPerM20}*(1+${conductor.alphaPerK}*(v(c)-20))`,
    `R1 c s ${wallKMPerW}`,
    // Starts the surface hot: left at nil the simulator can find the root below absolute zero.
    `C2 s 0 ${capacityJPerMK * 1e-6} ic=${wire.startC}`,
    `B2 s 0 I=${Math.PI * diameterM}*(${nusselt}*${conductivity}/${diameterM}*${rise}+${radiated})`,
    ".options reltol=1e-5",
    ".control",
    `tran ${wire.endS / 2000} ${wire.endS} uic`,
    `meas tran third find v(c) at=${wire.endS / 3}`,
    `meas tran whole find v(c) at=${wire.endS * 0.999}`,
    "quit",
    ".endc",
    ".end",
    "",
  ].join("\n");
}

test.each(cases)(
  "$areaMm2 mm² at $currentA A agrees with a circuit simulator within 1 % of the rise",
  (wire) => {
    const capacityJPerMK = heatCapacityJPerMK({ ...wire, insulationShareRatio: 1 }, pvc);
    const folder = mkdtempSync(join(tmpdir(), "heat-"));
    const file = join(folder, "wire.cir");
    writeFileSync(file, circuit(wire, capacityJPerMK));
    const printed = execFileSync("ngspice", ["-b", file], { encoding: "utf8", stdio: "pipe" });
    rmSync(folder, { recursive: true });
    const read = (name: string): number =>
      Number(new RegExp(`${name}\\s*=\\s*([-+.\\deE]+)`).exec(printed)?.[1]);
    const lump = {
      ohmPerM20: wire.ohmPerM20,
      alphaPerK: pvc.conductor.alphaPerK,
      capacityJPerMK,
      loss: lossTable(wireInAirPath(wire, { ...wire, materials: pvc }), {
        fromC: wire.ambientC,
        toC: 400,
        stepK: 1,
      }),
    };
    for (const [name, timeS] of [
      ["third", wire.endS / 3],
      ["whole", wire.endS * 0.999],
    ] as const) {
      const oursC = follow(lump, wire, { timeS }).temperatureC;
      const theirsC = read(name);
      expect(Number.isFinite(theirsC)).toBe(true);
      expect(Math.abs(theirsC - wire.startC)).toBeGreaterThan(5);
      expect(Math.abs((oursC - theirsC) / (theirsC - wire.startC))).toBeLessThan(0.01);
    }
  },
);
