import type { Job } from "../job/index.ts";
import { supplyRule } from "./supplyRule.ts";

/** Volts at the battery posts the balance is struck at where nobody says: the table's for 12 V, in proportion for another system. */
export const chargeVolts = (job: Job): number =>
  (supplyRule("charge-volts") * job.supply.nominalV) / 12;
