import type { Refusal } from "@copperwright/engine";
import { argumentRefusal } from "./refuse.ts";
import type { World } from "./world.ts";

/** What a printer makes of a bar of 100 mm. */
export interface PrinterReadings {
  readonly readAcrossMm: number;
  readonly readDownMm: number;
}

export type Printers = Readonly<Record<string, PrinterReadings>>;

export const PRINTERS_FILE = "printers.json";

/** The readings kept for every printer of this person; a file that is not ours is refused, never written over. */
export function readPrinters(
  world: World,
): { ok: true; printers: Printers } | { ok: false; refusal: Refusal } {
  const read = world.readSetting(PRINTERS_FILE);
  if (!read.ok) return { ok: false, refusal: unread(world, read.why) };
  if (read.text === null) return { ok: true, printers: {} };
  try {
    const { copperwrightPrinters, printers } = JSON.parse(read.text) as {
      copperwrightPrinters?: unknown;
      printers?: unknown;
    };
    if (copperwrightPrinters === 1 && isPrinters(printers)) return { ok: true, printers };
  } catch {
    // Told below, like a file of another kind.
  }
  return { ok: false, refusal: unread(world, "it is not a list of printers") };
}

const isPrinters = (value: unknown): value is Printers =>
  typeof value === "object" &&
  value !== null &&
  Object.values(value).every(
    (one) => Number.isFinite(one?.readAcrossMm) && Number.isFinite(one?.readDownMm),
  );

const unread = (world: World, why: string): Refusal =>
  argumentRefusal(
    "--printer",
    world.settingPath(PRINTERS_FILE),
    `The readings kept for printers cannot be read: ${why}.`,
    "Mend the file or take it away; then give both readings of the bar again.",
  );

export function writePrinters(world: World, printers: Printers): ReturnType<World["writeText"]> {
  const sorted = Object.fromEntries(Object.entries(printers).sort(([p], [q]) => (p < q ? -1 : 1)));
  const list = { copperwrightPrinters: 1, printers: sorted };
  return world.writeSetting(PRINTERS_FILE, `${JSON.stringify(list, null, 1)}\n`);
}
