import { LONGEST_NAME_COUNT, plainText } from "./plainText.ts";
import { readGauge } from "./readGauge.ts";
import { readMake } from "./readMake.ts";
import { readNumber } from "./readNumber.ts";
import { readStranding } from "./readStranding.ts";
import type { WallWord, WireName, WireNameReading } from "./wireName.ts";

/** Bounds of this reader: smaller is no wire of a loom, larger no cable of a vehicle. */
const LEAST_AREA_MM2 = 0.03;
const MOST_AREA_MM2 = 300;
const LEAST_DIAMETER_MM = 0.2;
const MOST_DIAMETER_MM = 30;

const number = "([+-]?[\\d.,]{1,12})";
const areaForm = new RegExp(
  `^${number} ?(?:mm2|mm\\^2|mm ?sq|sq\\.? ?mm|square mm|qmm|mmq|square millimetres?)$`,
);
const millimetres = new RegExp(`^${number} ?(?:mm|millimetres?)$`);

/**
 * Reads any way a person names a wire: `32/0.20`, `14/.012in`, `1 mm²`, `16 AWG`, `18 SWG`,
 * `4 mm auto`, `copper 1.2 mm`, `over insulation 2.4 mm`, `GXL 16`, `AV 0.85`.
 *
 * Pure reading: kinds and numbers, no table. What could mean two things is refused with the
 * reason (`2 mm` is an area to one person and a diameter to the next).
 *
 * @returns the name and the wall word beside it, or a reason. Never throws, whatever the text.
 */
export function readWireName(text: string): WireNameReading {
  if (text.length > LONGEST_NAME_COUNT) return { ok: false, reason: "too-long", value: null };
  const plain = plainText(text);
  if (plain === null) return refused("unread");
  const { wall, rest } = takeWallWords(plain);
  const byLetters = readMeasured(rest) ?? readMake(rest) ?? readGauge(rest);
  if (byLetters !== null) return byLetters.ok ? { ...byLetters, wall } : byLetters;
  const strands = readStranding(rest);
  if (strands !== null) return strands.ok ? { ...strands, wall } : strands;
  const area = areaForm.exec(rest);
  if (area !== null) {
    const areaMm2 = readNumber(area[1]!);
    if (areaMm2 === null) return refused("unread");
    if (areaMm2 < LEAST_AREA_MM2 || areaMm2 > MOST_AREA_MM2) return refused("size-bounds", areaMm2);
    return { ok: true, name: { kind: "area", areaMm2 }, wall };
  }
  const bareMm = millimetres.exec(rest);
  if (bareMm !== null) return refused("area-or-diameter", readNumber(bareMm[1]!));
  const bare = readNumber(rest);
  return bare === null ? refused("unread") : refused("bare-number", bare);
}

const refused = (
  reason: (WireNameReading & { ok: false })["reason"],
  value: number | null = null,
): WireNameReading & { ok: false } => ({ ok: false, reason, value });

/** Words that say which wall, or nothing at all, taken off either end. */
function takeWallWords(plain: string): { wall: WallWord | null; rest: string } {
  const words: readonly (readonly [RegExp, WallWord | null])[] = [
    [/\b(?:thin ?-?wall|thin|thinwall)\b/, "thin"],
    [/\b(?:thick ?-?wall|thick|ordinary)\b/, "thick"],
    [/\b(?:battery|starter)\b/, "battery"],
    [/\b(?:cable|wire|flex|lead|pvc)\b/, null],
  ];
  let rest = plain;
  let wall: WallWord | null = null;
  for (const [form, means] of words) {
    if (!form.test(rest)) continue;
    wall = wall ?? means;
    rest = rest.replace(form, " ").replace(/ +/g, " ").trim();
  }
  return { wall, rest };
}

const measuredForms: readonly (readonly [RegExp, "copper" | "insulation" | "auto"])[] = [
  [new RegExp(`^(?:measured )?(?:bare )?copper (?:dia(?:meter)? )?${number} ?(?:mm)?$`), "copper"],
  [
    new RegExp(
      `^(?:dia )?${number} ?mm (?:dia(?:meter)? )?(?:of |over )?(?:the )?(?:bare )?copper$`,
    ),
    "copper",
  ],
  [
    new RegExp(
      `^(?:over |across )?(?:the )?(?:insulation|outside|od|outer)(?: dia(?:meter)?)? ${number} ?(?:mm)?$`,
    ),
    "insulation",
  ],
  [
    new RegExp(
      `^${number} ?mm (?:od|outside|outer|(?:over|across) (?:the )?insulation|insulation)(?: dia(?:meter)?)?$`,
    ),
    "insulation",
  ],
  [new RegExp(`^${number} ?mm auto(?:motive)?$`), "auto"],
  [new RegExp(`^auto(?:motive)? ${number} ?mm$`), "auto"],
];

function readMeasured(
  rest: string,
): { readonly ok: true; readonly name: WireName } | (WireNameReading & { ok: false }) | null {
  for (const [form, kind] of measuredForms) {
    const found = form.exec(rest);
    if (found === null) continue;
    const mm = readNumber(found[1]!);
    if (mm === null) return refused("unread");
    if (mm < LEAST_DIAMETER_MM || mm > MOST_DIAMETER_MM) return refused("size-bounds", mm);
    if (kind === "auto") return { ok: true, name: { kind, sizeMm: mm } };
    return { ok: true, name: { kind, diameterMm: mm } };
  }
  return null;
}
