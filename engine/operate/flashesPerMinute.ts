import { figure } from "../tables/index.ts";

/** How often a flasher in order lights its lamps, 1/min, as regulations ask (tables/flashers). */
export const flashesPerMinute = (): number => figure("flashers", "rate", "value").value;
