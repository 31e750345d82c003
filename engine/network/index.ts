/** Network: direct-current networks of two-terminal laws, solved, with relays laid over them. Knows no trade word. */
export { type CompiledNetwork, compileNetwork, type NetworkOrder } from "./compileNetwork.ts";
export { lawCurrentA, lawSlopeS } from "./lawPoint.ts";
export type {
  Branch,
  CurveLaw,
  DiodeLaw,
  EmfLaw,
  FilamentLaw,
  Law,
  Network,
  OhmLaw,
  RelayRule,
} from "./network.ts";
export {
  type PairScreen,
  planPairs,
  planScreen,
  type Screen,
  type ScreenRequest,
  screenFaults,
  screenPairs,
} from "./screenFaults.ts";
export {
  type BothSettlements,
  type RelayOptions,
  type RelaySettlement,
  type RelayStatus,
  settleFrom,
  settleInPlace,
  settleRelays,
} from "./settleRelays.ts";
export type { BranchOverride, Short, Solution, SolveOptions, SolveStatus } from "./solution.ts";
export { solveInPlace, solveNetwork } from "./solveNetwork.ts";
export {
  FLOATING_BELOW_S,
  floatingNodes,
  theveninConductanceS,
  theveninConductancesS,
} from "./theveninConductances.ts";
