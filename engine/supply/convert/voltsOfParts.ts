import type { Filament, Part, PartOf } from "../../job/index.ts";
import { allTables, figure } from "../../tables/index.ts";
import {
  type ConvertedPart,
  elementsAt,
  type LoadPart,
  times,
  type VoltStep,
} from "./convertedPart.ts";
import { supplyPartAt } from "./voltsOfSupply.ts";

/** One part on other system volts: the rule of its kind. */
export function partAtVolts(part: Part, step: VoltStep): ConvertedPart {
  switch (part.kind) {
    case "lamp":
      return lampAt(part, step);
    case "horn":
    case "heater":
    case "resistor":
      return loadAt(part, step, LOAD_REASONS[part.kind]);
    case "module":
      return boxAt(part, step);
    case "coil":
      return coilAt(part, step);
    case "battery":
    case "regulator":
    case "generator":
    case "motor":
      return supplyPartAt(part, step);
    default:
      return joiningPartAt(part, step.toV / step.fromV);
  }
}

const LOAD_REASONS = {
  horn: "its winding is for the old volts: on twice the volts it takes twice the current and burns, on half it stays silent",
  heater: "the heat goes with the square of the volts",
  resistor: "it was chosen for the old volts",
  module: "electronics are made for one voltage; only its maker can say that it stands both",
} as const;

function loadAt(part: LoadPart, step: VoltStep, reason: string): ConvertedPart {
  if (part.elements.length === 0) return { part, action: "keep", reason: "not fed by the battery" };
  const elements = elementsAt(part.elements, step);
  return { part: { ...part, status: "new", elements }, action: "replace", reason };
}

function boxAt(part: PartOf<"module">, step: VoltStep): ConvertedPart {
  const { driver } = part;
  if (driver === undefined) return loadAt(part, step, LOAD_REASONS.module);
  // The same volts are lost in a conducting output whatever the system's.
  const ratio = step.toV / step.fromV;
  const moved = {
    ...driver,
    fromV: times(driver.fromV, ratio),
    ohm: times(driver.ohm, ratio),
  };
  return loadAt({ ...part, driver: moved }, step, LOAD_REASONS.module);
}

function joiningPartAt(part: Part, ratio: number): ConvertedPart {
  const kept = (reason: string): ConvertedPart => ({ part, action: "keep", reason });
  switch (part.kind) {
    case "relay": {
      const reason = "its coil is for the old volts; a contact is not";
      return { part: relayAt(part, ratio), action: "replace", reason };
    }
    case "flasher":
      return {
        part: { ...part, status: "new" },
        action: "replace",
        reason: "it flashes by the current or the volts it was made for",
      };
    case "capacitor":
      return kept("by its printed volts: it must stand the new ones with a margin");
    case "meter":
      if (part.measures === "volts") {
        const reason = "its scale and winding are for the old volts";
        return { part: { ...part, status: "new" }, action: "replace", reason };
      }
      return kept(
        ratio > 1
          ? "the same watts are half the amps: it reads half"
          : "the same watts are twice the amps: see that its scale reaches",
      );
    case "fuse":
      return { part, action: "adjust", reason: "its rating follows the new currents" };
    case "diode":
    case "rectifier":
      return kept(
        ratio > 1
          ? "if it stands five times the new volts in reverse; it carries less"
          : "if it stands twice the current",
      );
    default:
      return kept(
        ratio > 1
          ? "its contacts carry half the current"
          : "if its contacts stand twice the current",
      );
  }
}

function lampAt(part: PartOf<"lamp">, { fromV, toV }: VoltStep): ConvertedPart {
  const filaments = part.filaments.map((filament): Filament => {
    const { testV: _v, testW: _w, category: _c, ...rest } = filament;
    const category = sisterOf(filament, toV);
    return {
      ...rest,
      ratedV: (filament.ratedV * toV) / fromV,
      ...(category !== null && { category }),
    };
  });
  const reason = `${toV} V of the same watts; wire and switches then carry ${toV > fromV ? "half" : "twice"} the current`;
  return { part: { ...part, status: "new", filaments }, action: "replace", reason };
}

/** The lamp of the same name, filament and watts on the other volts; null where the table has none. */
function sisterOf({ category, ratedW }: Filament, toV: number): string | null {
  const { rows } = allTables.lamps;
  const own = rows.find(({ id }) => id === category);
  const sister = rows.find(
    (row) =>
      own !== undefined &&
      row.lamp === own.lamp &&
      row.filament === own.filament &&
      row.nominalV === toV &&
      row.nominalW === ratedW,
  );
  return sister?.id ?? null;
}

function coilAt(part: LoadPart, { toV }: VoltStep): ConvertedPart {
  if (part.elements.length === 0) {
    return { part, action: "keep", reason: "not fed by the battery" };
  }
  const row = `coil-${toV}`;
  const ohm = (figure("loads", row, "lowOhm").value + figure("loads", row, "highOhm").value) / 2;
  const elements = part.elements.map((one) => ({
    ...one,
    ohm: { value: ohm, basis: "estimated" as const },
  }));
  const reason =
    toV > 6
      ? `a ${toV} V coil, about ${ohm} ohm; the old one burns on twice the volts unless it runs behind a ballast resistor`
      : `a ${toV} V coil, about ${ohm} ohm; the old one has no spark left at half the volts`;
  return { part: { ...part, status: "new", elements }, action: "replace", reason };
}

function relayAt(part: PartOf<"relay">, ratio: number): PartOf<"relay"> {
  const { pullInV, dropOutV } = part.coil;
  const coil = {
    ...part.coil,
    ohm: times(part.coil.ohm, ratio ** 2),
    ...(pullInV && { pullInV: times(pullInV, ratio) }),
    ...(dropOutV && { dropOutV: times(dropOutV, ratio) }),
  };
  return { ...part, status: "new", coil };
}
