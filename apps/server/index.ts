/** The server of the bench. */
export { modestMemory } from "./modestMemory.ts";
export { type BenchOptions, type OpenBench, openBench } from "./openBench.ts";
export { StorageTrouble } from "./storage/index.ts";
