import type { PartOf } from "../../job/index.ts";
import { supplyRule } from "../supplyRule.ts";
import { type ConvertedPart, elementsAt, times, type VoltStep } from "./convertedPart.ts";

/** Battery, regulator, generator or starter on other system volts. */
export function supplyPartAt(
  part: PartOf<"battery"> | PartOf<"regulator"> | PartOf<"generator"> | PartOf<"motor">,
  step: VoltStep,
): ConvertedPart {
  const ratio = step.toV / step.fromV;
  switch (part.kind) {
    case "battery": {
      const reason = `a ${step.toV} V battery of the same ampere-hours; of another size, so measure the box`;
      return { part: batteryAt(part, step), action: "replace", reason };
    }
    case "regulator": {
      const reason = `holds ${figureText(part.setV.value * ratio)} V in place of ${figureText(part.setV.value)} V`;
      return { part: regulatorAt(part, step), action: "replace", reason };
    }
    case "motor": {
      const reason =
        "the same torque at other volts wants other field and armature wire; a starter of the new volts does as well";
      return { part: motorAt(part, ratio), action: "rewind", reason };
    }
    default:
      return generatorAt(part, step);
  }
}

const figureText = (value: number): string => String(Math.round(value * 10) / 10);

function batteryAt(part: PartOf<"battery">, { fromV, toV }: VoltStep): PartOf<"battery"> {
  const ratio = toV / fromV;
  const { restV, internalOhm, coldCrankingA, ...rest } = part;
  return {
    ...rest,
    status: "new",
    nominalV: part.nominalV * ratio,
    ...(restV && { restV: times(restV, ratio) }),
    ...(internalOhm && { internalOhm: times(internalOhm, ratio) }),
    ...(coldCrankingA && { coldCrankingA: times(coldCrankingA, 1 / ratio) }),
  };
}

function regulatorAt(part: PartOf<"regulator">, step: VoltStep): PartOf<"regulator"> {
  const ratio = step.toV / step.fromV;
  const { temperatureMvPerC, elements } = part;
  return {
    ...part,
    status: "new",
    setV: times(part.setV, ratio),
    ...(temperatureMvPerC && { temperatureMvPerC: times(temperatureMvPerC, ratio) }),
    ...(elements && { elements: elementsAt(elements, step) }),
  };
}

function motorAt(part: PartOf<"motor">, ratio: number): PartOf<"motor"> {
  const { freeA, freeV, stallA, stallV } = part;
  return {
    ...part,
    runOhm: times(part.runOhm, ratio ** 2),
    ...(freeA && { freeA: times(freeA, 1 / ratio) }),
    ...(freeV && { freeV: times(freeV, ratio) }),
    ...(stallA && { stallA: times(stallA, 1 / ratio) }),
    ...(stallV && { stallV: times(stallV, ratio) }),
  };
}

/**
 * A dynamo gives the same watts: half the amps at twice the volts, and with the same magnetism it turns twice as fast for them. Magnets do
 * not change, so an alternator keeps its output line; only its regulator holds it at other volts.
 */
function generatorAt(part: PartOf<"generator">, { fromV, toV }: VoltStep): ConvertedPart {
  const ratio = toV / fromV;
  if (part.type === "dynamo") {
    const windings = part.windings.map((winding) => ({
      ...winding,
      ...(winding.points && {
        points: winding.points.map((one) => ({
          speedRpm: Math.min(one.speedRpm * ratio, MOST_RPM),
          currentA: one.currentA / ratio,
          atV: one.atV * ratio,
          basis: "estimated" as const,
        })),
      }),
    }));
    const published = supplyRule("dynamo-speed-published");
    const reason =
      ratio > 1
        ? `the same watts and no more: half the amps, from a higher speed. Reckoned at ${figureText(ratio)} times; riders report ${figureText(published)} times`
        : "the same watts at a lower speed; its brushes carry twice the current, which may be more than they are made for";
    return { part: { ...part, windings }, action: "keep", reason };
  }
  if (part.type === "magneto")
    return {
      part,
      action: "keep",
      reason: "it makes its own spark and knows nothing of the battery",
    };
  if (part.type === "alternator-excited")
    return { part, action: "rewind", reason: "its rotor is wound for the old volts" };
  return {
    part,
    action: "keep",
    reason:
      ratio > 1
        ? "its magnets give the volts at a higher speed; the amps it can give stay, so a stator whose coils are switched in groups is joined as one"
        : "it reaches the volts sooner; the amps it can give stay, so at most half the watts",
  };
}

/** Largest speed a job may hold. */
const MOST_RPM = 20_000;
