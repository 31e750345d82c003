import type { SupplyAnswer } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine/words";
import type { Topic } from "./supplyStore.ts";
import { ampsText, rpmText, spellText } from "./supplyWords.ts";

export const TOPIC_WORDS: Readonly<Record<Topic, string>> = {
  charge: "Will it charge?",
  ride: "Will it last the ride?",
  start: "Will it start?",
  stand: "Will it last standing?",
  lamps: "What do the lamps get?",
  heat: "What gets hot?",
  convert: "Can it be other volts?",
};

/** Each question answered in a line, worst case first. */
export function topicAnswer(topic: Topic, answer: SupplyAnswer): string {
  return ANSWERS[topic](answer);
}

/** Less warms nothing, W. */
const LEAST_W = 0.05;

const ANSWERS: Readonly<Record<Topic, (answer: SupplyAnswer) => string>> = {
  charge: ({ balances }) => {
    const [most] = balances.toSorted((a, b) => b.demandA - a.demandA);
    if (most === undefined) return "no state is named in which it is ridden";
    if (most.why !== null) return most.why;
    if (most.balanceRpm === null) return `never with ${most.name}`;
    return `from ${rpmText(most.balanceRpm)} with ${most.name}`;
  },
  ride: ({ rides, noRides }) => {
    const [least] = rides.toSorted((a, b) => a.leastPercent - b.leastPercent);
    if (noRides !== null || least === undefined) return noRides ?? "no ride was reckoned";
    if (least.emptyAtS !== null)
      return `${rideWord(least.ride)}: flat after ${spellText(least.emptyAtS)}`;
    return `${rideWord(least.ride)} ends at ${printNumber(least.endPercent, 0)} % from ${printNumber(least.startPercent, 0)} %`;
  },
  start: ({ cranking, noCranking }) => {
    if (cranking === null) return noCranking === "no starter" ? "kicked over" : (noCranking ?? "");
    const [warm, ...cold] = cranking.rows;
    if (!warm!.turns) return "does not turn";
    const stuck = cold.filter(({ turns }) => !turns);
    const coldWord = stuck.length === cold.length ? "does not turn" : "may not turn";
    if (stuck.length > 0) return `${coldWord} at ${printQuantity(stuck[0]!.ambientC, "C")}`;
    const low = cranking.rows.some(({ postsHold }) => !postsHold) ? ", posts too low cold" : "";
    return `turns; ${printQuantity(warm!.postsV, "V")} at the battery, warm${low}`;
  },
  stand: ({ standing }) => {
    const [rest] = standing;
    if (rest === undefined) return "nothing to tell";
    const drain = rest.currentA === 0 ? "draws nothing" : `draws ${ampsText(rest.currentA)}`;
    return `${drain} at rest; may not start after ${spellText(rest.toNoStartS)}`;
  },
  lamps: ({ lampFall, lightingCoils }) => {
    if (lampFall !== null)
      return `${lampFall.name} ${printQuantity(lampFall.v, "V")} of ${printQuantity(lampFall.postsV, "V")}`;
    return lightingCoils.length > 0 ? "lit by the coil alone" : "no lamp is fed by the battery";
  },
  heat: ({ heat }) => {
    const [source] = heat;
    const fast = source?.rows.at(-1);
    if (source === undefined || fast === undefined) return "not known without two output points";
    if (fast.unitW < LEAST_W)
      return fast.windingW === null
        ? "the winding's resistance is not stated"
        : `winding ${printQuantity(fast.windingW, "W")} at ${rpmText(fast.speedRpm)}`;
    return `regulator ${printQuantity(fast.unitW, "W")} at ${rpmText(fast.speedRpm)}${source.isShunt ? ", stator always loaded" : ""}`;
  },
  convert: ({ nominalV, earthPolarity }) => `now ${nominalV} V, ${earthPolarity} earth`,
};

const RIDE_WORDS: Readonly<Record<string, string>> = {
  town: "town",
  mixed: "mixed",
  night: "night",
  rally: "rally",
  trace: "your ride",
};

export const rideWord = (ride: string): string => RIDE_WORDS[ride] ?? ride;
