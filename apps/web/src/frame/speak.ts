import { useBench } from "../store/benchStore.ts";
import { sumText } from "./sumText.ts";

/** Reads the sum line aloud, where the device has a voice. Signs a voice would stumble over are put in words. */
export function speak(): void {
  const { sum, said } = useBench.getState();
  const text = sum === null ? said : sumText(sum);
  if (text === null || !("speechSynthesis" in window)) return;
  speechSynthesis.cancel();
  speechSynthesis.speak(new SpeechSynthesisUtterance(spokenText(text)));
}

const WORDS: readonly (readonly [RegExp, string])[] = [
  [/mm²/g, " square millimetres"],
  [/mΩ\/m/g, " milliohms per metre"],
  [/mΩ/g, " milliohms"],
  [/Ω/g, " ohms"],
  [/°C/g, " degrees"],
  [/A²s/g, " ampere squared seconds"],
  [/×/g, " times "],
  [/÷/g, " divided by "],
  [/√/g, " root of "],
  [/≤/g, " at most "],
  [/≥/g, " at least "],
  [/→/g, " to "],
  [/−/g, " minus "],
  [/(\d)\/(\d)/g, "$1 by $2"],
  [/[·\u00a0\u2009]/g, " "],
];

export function spokenText(text: string): string {
  return WORDS.reduce((now, [sign, word]) => now.replace(sign, word), text).replace(/\s+/g, " ");
}
