import type { SymbolName } from "../../drawing/index.ts";
import type { Part } from "../../job/index.ts";
import type { Link } from "./machineGraph.ts";

/** The symbol of a part as one link shows it. */
export function partSymbol({ kind, closedAtRest }: Link, part: Part): SymbolName {
  switch (part.kind) {
    case "relay":
      if (kind === "coil") return "relayCoil";
      return closedAtRest ? "relayContactBreak" : "relayContact";
    case "switch":
      return switchSymbol(part, closedAtRest ?? false);
    case "lamp":
      return lampSymbol(part);
    case "coil":
      return "ignitionCoil";
    case "module":
      return "box";
    case "meter":
      return part.measures === "amps" ? "ammeter" : "voltmeter";
    case "generator":
      return generatorSymbol(part);
    // A path goes through one junction of a rectifier: what is drawn in it is a diode.
    case "rectifier":
      return "diode";
    case "battery":
    case "fuse":
    case "flasher":
    case "motor":
    case "diode":
    case "regulator":
    case "capacitor":
    case "horn":
    case "heater":
    case "resistor":
      return part.kind;
  }
}

/** A path goes through one filament: of a lamp with more, the limit of the lamp is drawn round it. */
const lampSymbol = (part: Part & { readonly kind: "lamp" }): SymbolName =>
  part.source === "led" ? "led" : part.filaments.length > 1 ? "lampFilament" : "lamp";

function switchSymbol(part: Part & { readonly kind: "switch" }, closed: boolean): SymbolName {
  if (part.driven === "engine") return "contactBreaker";
  if (part.driven === "machine" && /\boil\b/i.test(part.name)) return "oilSwitch";
  if (part.driven === "machine" && /\bneutral\b/i.test(part.name)) return "neutralSwitch";
  if (closed) return "switchBreak";
  if (/\bkey\b/i.test(part.name)) return "keySwitch";
  return part.momentary === true && part.driven === "hand" ? "pushButton" : "switchMake";
}

function generatorSymbol(part: Part & { readonly kind: "generator" }): SymbolName {
  if (part.type === "dynamo") return "dynamo";
  const phaseCount = part.windings
    .filter(({ use }) => use === "phase")
    .reduce((count, { pins }) => count + pins.length, 0);
  return phaseCount >= 3 ? "alternatorThreePhase" : "alternator";
}
