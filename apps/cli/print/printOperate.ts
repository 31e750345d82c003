import { type OperateSolution, printQuantity } from "@copperwright/engine";
import { printTable } from "../printTable.ts";

const volts = (value: number | null) => (value === null ? "floating" : printQuantity(value, "V"));
const amps = (value: number) => printQuantity(value, "A");
const seconds = (value: number | null) => (value === null ? "never" : printQuantity(value, "s"));

/** What works, what it gets, what flows, which fuse goes: the answer of one state in words. */
export function printOperate(solution: OperateSolution): string {
  const { state } = solution;
  const parts = [
    headOf(solution),
    loadsOf(solution),
    solution.strayLit.length > 0 ? `Lit and should not be: ${solution.strayLit.join(", ")}` : "",
    relaysOf(solution),
    fusesOf(solution),
    wiresOf(solution),
    floatingOf(solution),
    `Volts are to ${solution.reference.pin}. Copper at ${printQuantity(state.conductorC, "C")}, lamp exponent ${state.lampExponent}.`,
  ];
  return `${parts.filter((part) => part !== "").join("\n\n")}\n`;
}

function headOf({
  state,
  batteries,
  converged,
  kclResidualA,
  iterationCount,
}: OperateSolution): string {
  const positions = Object.entries(state.positions).map(
    ([part, position]) => `${part}=${position}`,
  );
  const engine =
    state.engine.mode === "running" ? `running at ${state.engine.speedRpm} rpm` : state.engine.mode;
  const lines = [
    `Engine ${engine}, flasher ${state.flash}. ${positions.join(" ")}`,
    ...batteries.map(
      (one) =>
        `Battery ${one.part}: ${amps(one.currentA)} ${one.currentA < 0 ? "charging" : "out"}, ${volts(one.terminalV)} at its posts`,
    ),
  ];
  if (!converged)
    lines.push(
      `NOT SOLVED: ${iterationCount} rounds, residual ${kclResidualA} A. Nothing below can be relied on.`,
    );
  return lines.flatMap((line) => breakAt(line, 100)).join("\n");
}

function breakAt(line: string, widthCount: number): readonly string[] {
  const lines: string[] = [""];
  for (const word of line.split(" ")) {
    const last = lines[lines.length - 1]!;
    if (last !== "" && last.length + 1 + word.length > widthCount) lines.push(`    ${word}`);
    else lines[lines.length - 1] = last === "" ? word : `${last} ${word}`;
  }
  return lines;
}

function loadsOf({ lamps, loads }: OperateSolution): string {
  const lampRows = lamps
    .filter((lamp) => Math.abs(lamp.currentA) > 0.001)
    .map((lamp) => [
      `${lamp.part}:${lamp.filament}`,
      volts(lamp.v),
      amps(lamp.currentA),
      printQuantity(lamp.powerW, "W"),
      `${Math.round(lamp.relativeLight * 100)} % light`,
      lamp.lit ? "lit" : "dim",
    ]);
  const loadRows = loads
    .filter((load) => Math.abs(load.currentA) > 0.001)
    .map((load) => [
      `${load.part}:${load.element}`,
      volts(load.v),
      amps(load.currentA),
      printQuantity(load.powerW, "W"),
      "",
      load.works ? "works" : "weak",
    ]);
  const rows = [...lampRows, ...loadRows];
  if (rows.length === 0) return "Nothing works.";
  return printTable(["load", "volts", "amps", "watts", "", ""], rows, { right: [1, 2, 3, 4] });
}

function relaysOf({ relays }: OperateSolution): string {
  if (relays.length === 0) return "";
  const rows = relays.map((relay) => [
    relay.part,
    relay.buzzing ? "buzzing" : relay.pulled ? "pulled" : "released",
    volts(relay.coilV),
    volts(relay.pullInV),
    volts(relay.dropOutV),
  ]);
  return printTable(["relay", "is", "coil", "pulls at", "drops at"], rows, { right: [2, 3, 4] });
}

function fusesOf({ fuses, afterFuses }: OperateSolution): string {
  const rows = fuses
    .filter((fuse) => Math.abs(fuse.currentA) > 0.001)
    .map((fuse) => [
      fuse.part,
      amps(fuse.currentA),
      amps(fuse.ratingA),
      fuse.opensMinS === null && fuse.opensMaxS === null
        ? "holds"
        : `opens in ${seconds(fuse.opensMinS)} to ${seconds(fuse.opensMaxS)}`,
    ]);
  const then = afterFuses.map(
    (after) => `Then ${after.opened.join(", ")} open and the rest is solved again.`,
  );
  if (rows.length === 0) return then.join("\n");
  return [printTable(["fuse", "carries", "rating", ""], rows, { right: [1, 2] }), ...then].join(
    "\n",
  );
}

function wiresOf({ wires }: OperateSolution): string {
  const rows = [...wires]
    .filter((wire) => Math.abs(wire.currentA) > 0.005)
    .sort(
      (left, right) =>
        Math.abs(right.currentA) - Math.abs(left.currentA) || (left.wire < right.wire ? -1 : 1),
    )
    .map((wire) => [
      wire.wire,
      wire.from,
      wire.to,
      amps(wire.currentA),
      wire.dropV === null ? (wire.why ?? "not known") : printQuantity(wire.dropV, "V"),
    ]);
  if (rows.length === 0) return "No wire carries current.";
  return printTable(["wire", "from", "to", "amps", "drop"], rows, { right: [3, 4] });
}

function floatingOf({ pins }: OperateSolution): string {
  const floating = pins.filter((pin) => pin.floating).map((pin) => pin.pin);
  if (floating.length === 0) return "";
  return breakAt(`Joined to nothing in this state: ${floating.join(" ")}`, 100).join("\n");
}
