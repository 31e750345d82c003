import { type Job, loadsOfPart, type Part } from "../job/index.ts";
import { printNumber, printQuantity } from "../units/index.ts";

const amps = (value: number): string => `${printNumber(value, value % 1 === 0 ? 0 : 1)} A`;
const watts = (value: number): string => `${printNumber(value, value % 1 === 0 ? 0 : 1)} W`;

/** What a part is and where: name, rating as stated, place. `coil`: of a relay, its coil. */
export function partNote(job: Job, part: Part, of: "whole" | "coil" = "whole"): string {
  const place = job.stations.find(({ id }) => id === part.station)?.name;
  return unbroken([partWords(part, of), place].filter((word) => word !== undefined).join(", "));
}

/** What a part is: name, and rating as stated where the name does not tell it. */
export function partWords(part: Part, of: "whole" | "coil" = "whole"): string {
  const full = of === "coil" && part.kind === "relay" ? coilText(part) : ratingText(part);
  const rating = part.name.includes(full) ? "" : withoutNamed(full, part.name);
  return unbroken(rating === "" ? part.name : `${part.name}, ${rating}`);
}

/** A figure is not parted from its unit at the end of a line. */
export const unbroken = (text: string): string =>
  text.replace(/(\d) (V|W|A|Ah|mm|Ω|kΩ)(?![a-z])/g, "$1\u00A0$2");

/** "20 A blade" beside the name "main 20 A" is "blade". */
const withoutNamed = (rating: string, name: string): string => {
  const [figure, unit, ...rest] = rating.split(" ");
  return rest.length > 0 && name.includes(`${figure} ${unit}`) ? rest.join(" ") : rating;
};

const coilText = (part: Part & { readonly kind: "relay" }): string =>
  `coil ${printQuantity(part.coil.ohm.value, "ohm")}`;

/** "12 V 60/55 W": volts once where all filaments are for the same. */
function lampRating({ filaments }: Part & { readonly kind: "lamp" }): string {
  const volts = [...new Set(filaments.map(({ ratedV }) => ratedV))];
  return volts
    .map((ratedV) => {
      const own = filaments.filter((filament) => filament.ratedV === ratedV);
      const figures = own.map(({ ratedW }) => printNumber(ratedW, ratedW % 1 === 0 ? 0 : 1));
      return `${printNumber(ratedV, 0)} V ${figures.join("/")} W`;
    })
    .join(", ");
}

/** Ratings as written on parts: "45/40 W", "15 A blade". Empty where the part states none. */
export function ratingText(part: Part): string {
  switch (part.kind) {
    case "fuse":
      return `${amps(part.ratingA)} ${part.type === "unknown" ? "" : part.type}`.trim();
    case "lamp":
      return lampRating(part);
    case "battery":
      return `${part.nominalV} V ${printNumber(part.capacityAh.value, part.capacityAh.value % 1 === 0 ? 0 : 1)} Ah`;
    case "generator":
      return part.ratedW === undefined ? "" : watts(part.ratedW);
    case "regulator":
      return `set to ${printQuantity(part.setV.value, "V")}`;
    case "switch":
      return part.contactRatingA === undefined ? "" : `contacts ${amps(part.contactRatingA.value)}`;
    case "coil":
    case "horn":
    case "heater":
    case "resistor":
    case "module": {
      const loads = loadsOfPart(part);
      const [first] = loads;
      return loads.length === 1 && first?.resistanceOhm
        ? printQuantity(first.resistanceOhm, "ohm")
        : "";
    }
    default:
      return "";
  }
}
