import { batteriesOf, presentParts } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { operateCommand, stateOf } from "../stateArguments.ts";

/** Batteries of motorcycles and small vehicles lie well inside these, Ah: anything else is a slip of the pen. */
const LEAST_AH = 1;
const MOST_AH = 120;

/** A capacity nobody sells, and coils that boil a battery dry when the key is left on with the points closed. */
export const batteryAndCoils: Judge = (design) => [...capacity(design), ...coilsLeftOn(design)];

function capacity({ job }: Design): readonly Finding[] {
  return batteriesOf(job)
    .filter(({ battery: { capacityAh } }) => {
      return capacityAh.value < LEAST_AH || capacityAh.value > MOST_AH;
    })
    .map(({ battery }) =>
      findingOf({
        code: "battery-capacity-doubtful",
        severity: "mend",
        subject: { kind: "part", id: battery.id },
        numbers: { capacityAh: battery.capacityAh.value, leastAh: LEAST_AH, mostAh: MOST_AH },
      }),
    );
}

function coilsLeftOn({ job, worst }: Design): readonly Finding[] {
  if (job.supply.ignition !== "battery-coil") return [];
  const battery = batteriesOf(job)[0]?.battery;
  const points = presentParts(job).some(
    (part) => part.kind === "switch" && part.driven === "engine",
  );
  const coils = [...worst.loads.values()].filter(
    ({ load, litCount }) => load.part.kind === "coil" && litCount > 0,
  );
  const first = coils.reduce<(typeof coils)[number] | null>(
    (most, one) => (most === null || one.mostW > most.mostW ? one : most),
    null,
  );
  if (battery === undefined || !points || first?.mostState == null) return [];
  const currentA = coils.reduce((sum, { mostA }) => sum + mostA, 0);
  return [
    findingOf({
      code: "coils-left-on",
      severity: "advise",
      subject: { kind: "part", id: first.load.part.id },
      also: coils.map(({ load }) => load.part.id).filter((id) => id !== first.load.part.id),
      state: stateOf(job, first.mostState),
      numbers: {
        coilW: first.mostW,
        currentA,
        coilCount: coils.length,
        flatH: battery.capacityAh.value / currentA,
        capacityAh: battery.capacityAh.value,
      },
      working: [
        {
          name: "time to flat",
          equation: "capacity / current of all coils",
          inputs: [
            { name: "capacity", value: battery.capacityAh.value, unit: "Ah", from: battery.id },
            { name: "current", value: currentA, unit: "A", from: "the network, points closed" },
          ],
          value: battery.capacityAh.value / currentA,
          unit: "h",
        },
      ],
      reproduce: operateCommand(job, first.mostState),
    }),
  ];
}
