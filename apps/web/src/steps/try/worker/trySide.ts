import { type GroupMark, type Mark, machineScene, marksBox } from "@copperwright/engine/scenes";
import { type Picture, pictureOf } from "../../../drawing/picture.ts";
import type { Held } from "../../../engine/held.ts";

export interface At {
  readonly xMm: number;
  readonly yMm: number;
}

/** The machine from the left with the places things hang on. */
export interface SidePicture {
  readonly picture: Picture;
  readonly stations: readonly (At & { readonly id: string; readonly name: string })[];
  readonly runs: readonly { readonly id: string; readonly from: string; readonly to: string }[];
  /** Station of every pin that has one, by PART.PIN. */
  readonly stationOfPin: Readonly<Record<string, string>>;
}

export interface SideQuestion {
  readonly widthMm: number;
  readonly heightMm: number;
  /** Left free above the machine for words, mm. */
  readonly bandMm: number;
}

/** Null where no station has been placed in the survey. */
export function trySide(held: Held, asked: SideQuestion): SidePicture | null {
  const { bandMm, widthMm, heightMm } = asked;
  const checked = held.checked();
  const scene = machineScene(held.scenes(), { widthMm, heightMm: heightMm - bandMm });
  if (scene === null) return null;
  const { job } = checked.design;
  const places = stationPlaces(scene.marks);
  return {
    picture: lowered(pictureOf(scene), bandMm),
    stations: job.stations.flatMap(({ id, name }) => {
      const at = places.get(id);
      return at === undefined ? [] : [{ id, name, xMm: at.xMm, yMm: at.yMm + bandMm }];
    }),
    runs: job.runs
      .filter(({ from, to }) => places.has(from) && places.has(to))
      .map(({ id, from, to }) => ({ id, from, to })),
    stationOfPin: Object.fromEntries(
      [...checked.design.pins].flatMap(([ref, place]) =>
        place.station === null ? [] : [[ref, place.station]],
      ),
    ),
  };
}

const lowered = ({ svg, widthMm, heightMm }: Picture, byMm: number): Picture => ({
  widthMm,
  heightMm: heightMm + byMm,
  svg: `<g transform="translate(0 ${byMm})">${svg}</g>`,
});

/** Middle of every station's ring on the drawing. */
function stationPlaces(marks: readonly Mark[]): ReadonlyMap<string, At> {
  const rings = marks.filter(
    (mark): mark is GroupMark => mark.kind === "group" && mark.of === "station",
  );
  return new Map(
    rings.flatMap(({ id, marks: own }) => {
      const box = marksBox(own);
      if (id === undefined || box === null) return [];
      const at = { xMm: box.xMm + box.widthMm / 2, yMm: box.yMm + box.heightMm / 2 };
      return [[id, at] as const];
    }),
  );
}
