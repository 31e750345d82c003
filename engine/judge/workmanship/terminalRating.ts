import type { WorkingStep } from "../../messages/index.ts";
import {
  type Figure,
  figure,
  figureOrNull,
  terminalCurrents,
  terminals,
} from "../../tables/index.ts";

/** What a terminal may carry on so much copper, and for how long. */
export interface TerminalRating {
  readonly limit: Figure;
  /** Most it may carry 45 minutes in the hour, A; null where the table does not say. */
  readonly intermittentA: number | null;
  readonly working: readonly WorkingStep[];
}

/** Series of tables/terminalCurrents that stands for a terminal. */
const SERIES: Readonly<Record<string, string>> = {
  "blade-2.8": "blade-2.8",
  "blade-4.8": "blade-6.3",
  "blade-6.3": "blade-6.3",
  "blade-6.3-large": "blade-6.3",
  "blade-6.3-red": "blade-6.3",
  "blade-6.3-blue": "blade-6.3",
  "blade-6.3-yellow": "blade-6.3",
};

/**
 * Continuous current of a terminal: of a blade by the copper on it, between two rows of the table in proportion,
 *
 *   I = I1 + (I2 − I1) · (A − A1) / (A2 − A1)
 *
 * of anything else the figure of its row. Null outside the table and for rings, which are bolted.
 *
 * @param areaMm2  copper of the wire, mm².
 */
export function terminalRating(terminal: string, areaMm2: number): TerminalRating | null {
  const series = SERIES[terminal];
  if (series !== undefined) return bladeRating(series, areaMm2);
  if (!terminals.some(({ id }) => id === terminal)) return null;
  const limit = figureOrNull("terminals", terminal, "typicalA");
  return limit === null ? null : { limit, intermittentA: null, working: [] };
}

function bladeRating(series: string, areaMm2: number): TerminalRating | null {
  const rows = terminalCurrents
    .filter((row) => row.series === series)
    .sort((a, b) => a.areaMm2 - b.areaMm2);
  const upper = rows.find((row) => row.areaMm2 >= areaMm2);
  const lower = rows.findLast((row) => row.areaMm2 <= areaMm2);
  if (upper === undefined || lower === undefined) return null;
  const exact = figure("terminalCurrents", lower.id, "continuousA");
  if (upper.id === lower.id) {
    return { limit: exact, intermittentA: lower.intermittentA, working: [] };
  }
  const share = (areaMm2 - lower.areaMm2) / (upper.areaMm2 - lower.areaMm2);
  const value = lower.continuousA + (upper.continuousA - lower.continuousA) * share;
  const input = (name: string, of: number, unit: string, row: string) => ({
    name,
    value: of,
    unit,
    from: `tables/terminalCurrents/${row}`,
  });
  return {
    limit: { ...exact, value, row: `${lower.id} and ${upper.id}`, confidence: "derived" },
    intermittentA: lower.intermittentA + (upper.intermittentA - lower.intermittentA) * share,
    working: [
      {
        name: "continuous current of the blade",
        equation: "I = I1 + (I2 - I1) * (A - A1) / (A2 - A1)",
        inputs: [
          { name: "A", value: areaMm2, unit: "mm2", from: "the wire's make" },
          input("A1", lower.areaMm2, "mm2", lower.id),
          input("A2", upper.areaMm2, "mm2", upper.id),
          input("I1", lower.continuousA, "A", lower.id),
          input("I2", upper.continuousA, "A", upper.id),
        ],
        value,
        unit: "A",
      },
    ],
  };
}
