import { tryMachine } from "./worker/tryMachine.ts";
import { tryProbe } from "./worker/tryProbe.ts";
import { trySide } from "./worker/trySide.ts";
import { tryState } from "./worker/tryState.ts";

/** What the worker answers for Try. */
export const tryAnswers = { tryMachine, trySide, tryState, tryProbe };
