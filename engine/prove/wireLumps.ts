import {
  type Bundle,
  bundleConductorTemperaturesC,
  bundlePaths,
  type DurationLimits,
  heatCapacityJPerMK,
  heatMaterials,
  type Lump,
  loomMaterials,
  lossTable,
} from "../heat/index.ts";
import type { Conductor, Conductors, Routed, Stretch } from "../route/index.ts";
import { figure } from "../tables/index.ts";

/** A conductor in one place as the heat model sees it, with its neighbours at their largest lasting currents. */
export interface PlacedLump {
  /** Stretch of loom; null where it lies alone. */
  readonly stretch: string | null;
  readonly ambientC: number;
  /** Hottest healthy state, °C; null where even that has no steady temperature below the end of the table. */
  readonly startC: number | null;
  readonly lump: Lump;
  readonly metalJPerMK: number;
  readonly limits: DurationLimits;
  /** Lowest insulation class in the bundle, °C. */
  readonly classC: number;
}

const SECONDS_PER_HOUR = 3600;
/** Distance of the knots of a loss table, K, and how far it goes over the highest limit. */
const LOSS_STEP_K = 4;
const OVER_LIMIT_K = 20;
/** A wire that carries nothing settles at the air's temperature: the table reaches a little below. */
const BELOW_AIR_K = 5;
/** The bundle model is not asked above this, °C. */
const CEILING_C = 400;

/** Wires of no stretch lie alone. */
export function wireLumps(
  conductors: Conductors,
  routed: Routed,
  lastingA: (conductor: string) => number,
): (conductor: string) => readonly PlacedLump[] {
  const bundles = new Map<string, readonly BundleLump[]>();
  const lumpsOf = (stretch: Stretch): readonly BundleLump[] => {
    const known = bundles.get(stretch.id);
    if (known !== undefined) return known;
    const wires = [...new Set(stretch.wires)].map((id) => conductors.get(id)!);
    const made = bundleLumps(wires, stretch.ambientC, lastingA);
    bundles.set(stretch.id, made);
    return made;
  };
  return (id) => {
    const conductor = conductors.get(id)!;
    const stretches = routed.stretchesOfWire.get(id) ?? [];
    if (stretches.length === 0) {
      const [alone] = bundleLumps([conductor], conductor.ambientC, lastingA);
      return [{ stretch: null, ...alone!.make() }];
    }
    return stretches.map((stretch) => ({
      stretch: stretch.id,
      ...lumpsOf(stretch)
        .find((one) => one.id === id)!
        .make(),
    }));
  };
}

interface BundleLump {
  readonly id: string;
  readonly make: () => Omit<PlacedLump, "stretch">;
}

/** Steady bundle with every wire at its largest lasting current: what each wire starts from, and what its neighbours add. */
function bundleLumps(
  wires: readonly Conductor[],
  ambientC: number,
  lastingA: (conductor: string) => number,
): readonly BundleLump[] {
  const packing = loomMaterials();
  const bundle: Bundle = {
    wires: wires.map(roundWire),
    bundleDiameterMm: null,
    packingRatio: packing.packingRatio,
    conductivityWPerMK: packing.conductivityWPerMK,
    sleeve: null,
    ambientC,
    materials: heatMaterials(wires[0]!.insulation),
  };
  const steady = bundleConductorTemperaturesC({
    ...bundle,
    currentsA: wires.map(({ id }) => lastingA(id)),
    ceilingC: CEILING_C,
  });
  const classC = Math.min(...wires.map((wire) => wire.classC));
  const limits = limitsOf(classC, wires);
  const paths = bundlePaths(bundle);
  return wires.map((wire, i) => {
    let known: Omit<PlacedLump, "stretch"> | null = null;
    const make = (): Omit<PlacedLump, "stretch"> => {
      const startC = steady.ok ? steady.conductorsC[i]! : null;
      const othersWPerM = steady.ok ? steady.totalHeatWPerM - steady.heatsWPerM[i]! : 0;
      const path = { ...paths[i]!, otherHeatWPerM: othersWPerM };
      const materials = heatMaterials(wire.insulation);
      const round = { ...roundWire(wire), areaMm2: wire.areaMm2, insulationShareRatio: 0 };
      const metalJPerMK = heatCapacityJPerMK(round, materials);
      const loss = lossTable(path, {
        fromC: ambientC - BELOW_AIR_K,
        toC: limits.shortC + OVER_LIMIT_K,
        stepK: LOSS_STEP_K,
      });
      const lump = {
        ohmPerM20: wire.ohmPerM20Max,
        alphaPerK: materials.conductor.alphaPerK,
        capacityJPerMK: metalJPerMK,
        loss,
      };
      known ??= { ambientC, startC, lump, metalJPerMK, limits, classC };
      return known;
    };
    return { id: wire.id, make: () => known ?? make() };
  });
}

function roundWire({ ohmPerM20Max, conductorDiameterMm, odMm }: Conductor) {
  return { ohmPerM20: ohmPerM20Max, conductorDiameterMm, outerDiameterMm: odMm };
}

/** What the tenderest insulation in the bundle stands: a hot wire lies against its neighbours. */
function limitsOf(classC: number, wires: readonly Conductor[]): DurationLimits {
  const rule = (id: string): number => figure("heatLimits", id, "value").value;
  const ends = wires.map(
    ({ insulation }) => figure("insulations", insulation, "adiabaticEndC").value,
  );
  const shortC = Math.min(...ends);
  return {
    shortS: rule("adiabatic-longest"),
    shortC,
    longS: rule("hours-longest") * SECONDS_PER_HOUR,
    longC: Math.min(shortC, classC + rule("hours-rise")),
    foreverC: Math.min(shortC, classC + rule("endless-rise")),
  };
}
