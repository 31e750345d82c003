import type { PaperInput } from "../paperInput.ts";
import { continuityRows, firstPowerRows, insulationRows, lookRows, roadRows } from "./benchRows.ts";
import { dropRows } from "./dropRows.ts";
import { chargeRows, drainRows, earthRows, starterRows } from "./machineRows.ts";
import { stateRows } from "./stateRows.ts";
import type { TestRow } from "./testRow.ts";

/** One heading of the test sheet with its rows in their order. */
export interface TestSection {
  readonly heading: string;
  readonly lead: string;
  readonly rows: readonly TestRow[];
  /** Two rows beside each other on paper: they are many and short. */
  readonly isTwoUp?: boolean;
}

/** Every section in the order of the tests. */
export function testSections(input: PaperInput): readonly TestSection[] {
  return [
    { heading: "1. Before anything", lead: "", rows: lookRows(input) },
    {
      heading: "2. Continuity, wire by wire",
      lead: "From end to end, meter leads nulled, and to no other wire. Expected: the copper alone. Tick when the wire reaches its own far end and nothing else.",
      rows: continuityRows(input),
      isTwoUp: true,
    },
    {
      heading: "3. Insulation",
      lead: "Never a high-voltage test of a loom with parts on it.",
      rows: insulationRows(),
    },
    { heading: "4. First power", lead: "", rows: firstPowerRows(input) },
    {
      heading: "5. State by state",
      lead: "Volts are measured at the pins named, current in the battery lead.",
      rows: stateRows(input),
    },
    {
      heading: "6. Volt drops",
      lead: "The worst state found for each load. Live side and earth side are measured from the battery post to the load's pin.",
      rows: dropRows(input),
    },
    {
      heading: "7. Earths",
      lead: "With the loads of that earth on: volts from the place named to the earthed battery post.",
      rows: earthRows(input),
    },
    {
      heading: "8. Charging",
      lead: "Engine warm. Computed volts are those of a battery that takes all the current offered; as it fills they rise to the regulator's setting.",
      rows: chargeRows(input),
    },
    { heading: "9. Starter", lead: "", rows: starterRows(input) },
    { heading: "10. Standing drain", lead: "", rows: drainRows(input) },
    { heading: "11. Last", lead: "", rows: roadRows() },
  ];
}
