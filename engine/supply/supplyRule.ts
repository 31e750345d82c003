import { type Figure, figure } from "../tables/index.ts";

/** A row of tables/supplyRules with its source. */
export const supplyFigure = (id: string): Figure => figure("supplyRules", id, "value");

/** Its value alone, in the unit the table says. */
export const supplyRule = (id: string): number => supplyFigure(id).value;
