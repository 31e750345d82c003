import type { PartKind } from "../job.ts";

/** How a figure is found out on the machine or on the bench (common practice). */
export function howToMeasure(kind: PartKind, unit: string): string {
  return BY_KIND[`${kind} ${unit}`] ?? BY_UNIT[unit] ?? "read what is stamped on it";
}

const BY_KIND: Readonly<Record<string, string>> = {
  "battery Ah": "read the label of the battery",
  "battery V": "after a night at rest, fully charged, lamps off",
  "battery ohm": "volts fallen over amps drawn, with the headlamp on for some seconds",
  "battery A": "read the label; it is often not given",
  "horn ohm": "ammeter in its lead while it sounds: ohms are volts over amps",
  "motor ohm": "clamp meter while it turns under load: ohms are volts over amps",
  "motor A": "clamp meter on its lead",
  "motor V": "voltmeter on its own terminals at the same moment",
  "generator ohm":
    "ohmmeter with its leads off, both probes on the winding, less the probes joined",
  "relay V": "raise the volts slowly until it clicks, lower them until it lets go",
  "regulator V": "voltmeter on the battery, lights on, at a good engine speed",
  "switch A": "stamped on the body, or what the maker says of it",
  "capacitor uF": "read its can",
};

const BY_UNIT: Readonly<Record<string, string>> = {
  ohm: "ohmmeter with at least one lead off, less the probes joined; or volts over amps while it works",
  A: "read what is stamped on it, or an ammeter in its lead",
  V: "voltmeter on its own terminals",
  W: "read the cap of the bulb",
};
