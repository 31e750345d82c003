import { parentPort, workerData } from "node:worker_threads";
import { type PlotInput, plottedJob, timeCurrentsOf } from "@copperwright/engine";
import { proveInThreads } from "./proveInThreads.ts";

/** The whole of a proof and its plots, away from the thread that draws. */
const input = workerData as PlotInput;
const result = await proveInThreads(input.proof, () => {});
parentPort!.postMessage({ result, plots: timeCurrentsOf(plottedJob(input)) });
