import type { BranchOverride, RelaySettlement } from "../network/index.ts";
import type { JobNetwork } from "./buildJobNetwork.ts";
import type { NetworkState, QuickState } from "./stateOverrides.ts";

/** How the sources that are controlled from elsewhere came to rest. */
export interface SuppliesSettled {
  readonly settled: boolean;
  readonly roundCount: number;
}

export function settleSupplies(question: {
  readonly jobNetwork: JobNetwork;
  readonly state: QuickState;
  readonly set: NetworkState;
  readonly once: (overrides: readonly BranchOverride[]) => RelaySettlement;
}): {
  readonly settlement: RelaySettlement;
  readonly overrides: readonly BranchOverride[];
  readonly supplies: SuppliesSettled;
} {
  const { set, once } = question;
  return {
    settlement: once(set.overrides),
    overrides: set.overrides,
    supplies: { settled: true, roundCount: 1 },
  };
}
