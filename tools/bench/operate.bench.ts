import { compareState, twoAtATime } from "../../cases/simulator/compareState.ts";
import { drawState, machines, seededRatios } from "../../cases/simulator/drawStates.ts";
import {
  compileJob,
  conditionsOf,
  startingStates,
  worstCurrents,
} from "../../engine/operate/index.ts";

const SEED = 1;
const AGREEMENT_STATES = 10_000;
const AGREED_V = 1e-6;

/** States a second of each demo machine, its search for largest currents, and agreement with a circuit simulator. */
export async function run() {
  const all = machines();
  const originals = all.filter(({ name }) => !/mirrored|accessory/.test(name));
  const rates = originals.flatMap(({ name, job, conductors }) => {
    const compiled = compileJob(job, conductors, { conditions: conditionsOf(job, {}) });
    const states = startingStates(job);
    const rate = (mode: string): number => {
      const chosen = states.filter(({ engine }) => engine.mode === mode);
      for (const state of chosen) compiled.solve(state);
      const before = performance.now();
      let count = 0;
      while (performance.now() - before < 1000) {
        for (const state of chosen) compiled.solve(state);
        count += chosen.length;
      }
      return (1000 * count) / (performance.now() - before);
    };
    const before = performance.now();
    const worst = worstCurrents(job, conductors);
    const searchS = (performance.now() - before) / 1000;
    return [
      { name: `${name}: states solved, engine standing`, value: rate("stopped"), unit: "1/s" },
      { name: `${name}: states solved, engine running`, value: rate("running"), unit: "1/s" },
      {
        name: `${name}: states of the search for largest currents`,
        value: worst.stateCount,
        unit: "",
      },
      { name: `${name}: time of that search`, value: searchS, unit: "s" },
    ];
  });
  return [...rates, ...(await agreement())];
}

async function agreement() {
  const all = machines();
  const ratio = seededRatios(SEED);
  const drawn = Array.from({ length: AGREEMENT_STATES }, (_, k) => drawState(all, k, ratio));
  const before = performance.now();
  const compared = (await twoAtATime(drawn, compareState)).filter((one) => one !== null);
  const gaveUp = compared.filter(({ awayV }) => awayV === null);
  const disagreeing = compared.filter(({ awayV }) => awayV !== null && !(awayV <= AGREED_V));
  for (const { drawn: state, awayV, pin } of [...gaveUp, ...disagreeing]) {
    console.log(
      `  ${state.machine.name} ${pin} ${awayV} V ${JSON.stringify({ ...state, machine: null })}`,
    );
  }
  const largestV = Math.max(...compared.map(({ awayV }) => awayV ?? 0));
  return [
    {
      name: "states compared with the circuit simulator",
      value: compared.length - gaveUp.length,
      unit: "",
    },
    { name: "states the simulator found no operating point for", value: gaveUp.length, unit: "" },
    { name: "of these further apart than 1e-6 V", value: disagreeing.length, unit: "", target: 0 },
    { name: "largest difference", value: largestV, unit: "V", target: AGREED_V },
    { name: "time of the comparison", value: (performance.now() - before) / 1000, unit: "s" },
  ];
}
