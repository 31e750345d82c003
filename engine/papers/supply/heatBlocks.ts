import {
  type AreaMm,
  type Block,
  headingBlock,
  paragraphBlocks,
  type TableColumn,
  tableBlocks,
} from "../../drawing/index.ts";
import type { SupplyAnswer } from "../../supply/index.ts";
import { printNumber, printQuantity } from "../../units/index.ts";

const column = (key: string, heading: string): TableColumn => ({
  key,
  heading,
  width: { kind: "share", share: 1, minMm: 20 },
  align: "end",
});

const watts = (powerW: number | null): string =>
  powerW === null ? "not known" : `${printNumber(powerW, powerW < 10 ? 1 : 0)}\u00A0W`;

/** Where the watts go that nothing uses: winding, unit, and zeners where there are any. */
export function heatBlocks({ heat, balances }: SupplyAnswer, content: AreaMm): readonly Block[] {
  const { widthMm, heightMm } = content;
  return heat.flatMap(({ generator, state, isShunt, rows }) => {
    const lit = balances.find((one) => one.state === state)?.name ?? state;
    const hasZener = rows.some(({ zenerW }) => zenerW !== null);
    const table = {
      columns: [
        column("rpm", "rpm"),
        column("used", "Used"),
        column("winding", "In the winding"),
        column("windingHeat", "Winding"),
        column("unitHeat", "Rectifier and regulator"),
        ...(hasZener ? [column("zenerHeat", "Zener")] : []),
      ],
      groups: [
        {
          heading: null,
          rows: rows.map((row) => ({
            cells: {
              rpm: printNumber(row.speedRpm, 0),
              used: printQuantity(row.outputA, "A"),
              winding: printQuantity(row.windingA, "A"),
              windingHeat: watts(row.windingW),
              unitHeat: watts(row.unitW),
              zenerHeat: watts(row.zenerW),
            },
          })),
        },
      ],
    };
    const words = isShunt
      ? "Its regulator shorts the winding: switching lamps off does not cool it."
      : hasZener
        ? "The zener burns what nothing else takes: it wants metal and air round it."
        : "";
    return [
      ...headingBlock(`Heat of ${generator}, battery nearly full, lit as in: ${lit}`, widthMm, 2),
      ...tableBlocks(table, widthMm, heightMm),
      ...(words === "" ? [] : paragraphBlocks(words, widthMm)),
    ];
  });
}

/** Running on a capacitor in place of the battery: whether it may, and how far the volts fall between two pulses. */
export function rippleBlocks({ withoutBattery }: SupplyAnswer, content: AreaMm): readonly Block[] {
  const { allowed, reasons, leastUf, mostUf, leastV, earthed, ripple } = withoutBattery;
  const { widthMm, heightMm } = content;
  const title = headingBlock("Without a battery, on a capacitor", widthMm, 2);
  const because = `${allowed ? "It may run so" : "Not on this machine"}: ${reasons.join("; ")}.`;
  if (!allowed) return [...title, ...paragraphBlocks(because, widthMm)];
  const size = `${printNumber(leastUf, 0)} to ${printNumber(mostUf, 0)}\u00A0µF for ${printNumber(leastV, 0)}\u00A0V or more, its ${earthed} end on the frame.`;
  const words = paragraphBlocks(`${because} ${size}`, widthMm);
  if (ripple === null) return [...title, ...words];
  const { currentA, speedRpm, capacitanceUf, isFitted, rows } = ripple;
  const lead = `Between two pulses the capacitor gives the current alone: volts = amps / (farads × pulses a second), at most. Here ${printQuantity(currentA, "A")} at ${printNumber(speedRpm, 0)} rpm on ${printNumber(capacitanceUf, 0)}\u00A0µF (${isFitted ? "fitted" : "the least that is asked for"}). Count the magnets: two to a pole pair.`;
  const table = {
    columns: [
      column("pairs", "Pole pairs"),
      column("pulses", "Pulses a second"),
      column("ripple", "Volts up and down"),
    ],
    groups: [
      {
        heading: null,
        rows: rows.map((row) => ({
          cells: {
            pairs: printNumber(row.polePairCount, 0),
            pulses: printNumber(row.pulseHz, 0),
            ripple: printQuantity(row.rippleV, "V"),
          },
        })),
      },
    ],
  };
  return [
    ...title,
    ...words,
    ...paragraphBlocks(lead, widthMm),
    ...tableBlocks(table, widthMm, heightMm),
  ];
}
