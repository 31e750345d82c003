import { viaOver } from "@copperwright/engine";
import {
  type MachineScene,
  machineScene,
  type PointMm,
  sectionScenes,
  wayPoints,
} from "@copperwright/engine/scenes";
import { type Picture, pictureOf } from "../../drawing/picture.ts";
import type { Held } from "../../engine/held.ts";

/** One bundle cut through, with what it needs to be covered and bent. */
export interface SectionView {
  readonly name: string;
  readonly places: string;
  readonly wires: readonly string[];
  readonly runs: readonly string[];
  readonly picture: Picture;
  readonly tightestMm: number;
  readonly asLaidMm: number;
  readonly asLaidFactor: number;
  readonly source: string;
  readonly bend: { readonly fixed: number; readonly moving: number };
  readonly sleeves: readonly string[];
}

/** Where a joint lies along its run, and how far it may be moved. */
export interface JointView {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly wayCount: number;
  /** Runs it may lie on: where it is now, or those at its station. */
  readonly runs: readonly {
    readonly id: string;
    readonly name: string;
    readonly lengthMm: number;
  }[];
  readonly run: string | null;
  readonly atMm: number | null;
  readonly station: string | null;
}

/** The machine with the loom on it, and where its stations lie there. */
export interface MachineView {
  readonly picture: Picture;
  readonly rings: MachineScene["rings"];
}

const ROOM = { widthMm: 300, heightMm: 150 };

export const loomAnswers = {
  loomMachine(held: Held): MachineView | null {
    const scene = machineScene(held.scenes(), ROOM);
    return scene === null ? null : { picture: pictureOf(scene), rings: scene.rings };
  },

  /** The way of a wire on that drawing. */
  loomWay(held: Held, wire: string): readonly PointMm[] {
    const scene = machineScene(held.scenes(), ROOM);
    return scene === null || wire === "" ? [] : wayPoints(held.scenes(), wire, scene.rings);
  },

  /** The wire told to pass one more station, where the way is shortest; null: no way leads over it. */
  loomVia(
    held: Held,
    { wire, station }: { readonly wire: string; readonly station: string },
  ): readonly string[] | null {
    return viaOver(held.job, wire, station);
  },

  loomSections(held: Held): readonly SectionView[] {
    const checked = held.checked();
    return sectionScenes(held.scenes()).map(({ name, places, wires, bundle, scene }) => {
      const ids = wires.map(({ id }) => id);
      const runs = checked.design.routed.stretches
        .filter(
          (stretch) =>
            stretch.wires.length === ids.length && ids.every((id) => stretch.wires.includes(id)),
        )
        .map(({ run }) => run);
      return {
        name,
        places,
        wires: ids,
        runs: [...new Set(runs)],
        picture: pictureOf(scene),
        tightestMm: bundle.tightestMm,
        asLaidMm: bundle.asLaidMm,
        asLaidFactor: bundle.asLaidFactor,
        source: bundle.source,
        bend: { fixed: bundle.bendRadiusMm.fixed, moving: bundle.bendRadiusMm.moving },
        sleeves: bundle.sleeve
          .filter(({ ok }) => ok)
          .map(({ kind, sizeMm }) => `${kind.replace("-", " ")} ${sizeMm} mm inside`),
      };
    });
  },

  loomJoints(held: Held): readonly JointView[] {
    const { job } = held;
    const nameOf = (id: string): string =>
      job.stations.find((station) => station.id === id)?.name ?? id;
    return job.joints.map((joint) => {
      const { offset, station = null } = joint;
      const runs = job.runs.filter(
        (run) =>
          run.id === offset?.run ||
          (station !== null && (run.from === station || run.to === station)),
      );
      return {
        id: joint.id,
        name: joint.name ?? joint.id,
        kind: joint.kind,
        wayCount: joint.ways.length,
        runs: runs.flatMap(({ id, from, to, lengthMm }) =>
          lengthMm === undefined
            ? []
            : [{ id, name: `${nameOf(from)} to ${nameOf(to)}`, lengthMm: lengthMm.value }],
        ),
        run: offset?.run ?? null,
        atMm: offset?.mm.value ?? null,
        station: station === null ? null : nameOf(station),
      };
    });
  },
};
