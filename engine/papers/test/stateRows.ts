import { type Job, loadsOf } from "../../job/index.ts";
import type { OperateSolution } from "../../operate/index.ts";
import { printQuantity } from "../../units/index.ts";
import { loadReader } from "../loadText.ts";
import type { PaperInput } from "../paperInput.ts";
import type { NamedState, SolvedState } from "../solvedStates.ts";
import { test } from "./benchRows.ts";
import type { TestRow } from "./testRow.ts";

/** Every named state with what a meter should show in it. */
export function stateRows(input: PaperInput): readonly TestRow[] {
  return input.states.flatMap((solved) => rowsOf(input, solved));
}

function rowsOf(input: PaperInput, { state, solution }: SolvedState): readonly TestRow[] {
  const { job } = input;
  const group = `${state.name}: ${positionsText(job, state)}`;
  const base = { section: "states", group, note: "", unit: "" } as const;
  if (solution === null) {
    return [
      {
        ...base,
        what: "not computed",
        note: "this state does not settle: see the findings",
        expected: "",
        limit: "",
        isRead: false,
        expectedValue: null,
      },
    ];
  }
  const dead = (state.off ?? []).map(loadReader(job));
  return [
    ...batteryRows(solution, base),
    ...(state.on ?? []).flatMap((ref) => loadRow(input, solution, ref, base)),
    ...(dead.length === 0
      ? []
      : [
          {
            ...base,
            what: `Dead: ${dead.join(", ")}`,
            expected: "",
            limit: "",
            isRead: false,
            expectedValue: null,
          },
        ]),
  ];
}

/** "KEY ON, LSW H, engine 4 000 rpm". */
export function positionsText(job: Job, { positions, engine, flash }: NamedState): string {
  const set = Object.entries(positions).map(([part, position]) => `${part} ${position}`);
  const mode =
    engine === undefined || engine.mode === "stopped"
      ? "engine stopped"
      : engine.mode === "cranking"
        ? "starter turning"
        : `engine ${engine.speedRpm === undefined ? "running" : printQuantity(engine.speedRpm, "rpm")}`;
  const lit =
    flash === "on" && job.parts.some(({ kind }) => kind === "flasher") ? ["flasher lit"] : [];
  return [...(set.length === 0 ? ["everything at rest"] : set), mode, ...lit].join(", ");
}

type Base = Pick<TestRow, "section" | "group" | "note" | "unit">;

function batteryRows({ batteries }: OperateSolution, base: Base): readonly TestRow[] {
  const band = test("33-current-band").value;
  return batteries.flatMap(({ part, currentA, terminalV }): readonly TestRow[] => [
    {
      ...base,
      what: `${part}: ${currentA < 0 ? "charging current" : "current out"}`,
      expected: printQuantity(Math.abs(currentA), "A"),
      limit: `${printQuantity(Math.abs(currentA) * (1 - band), "A")} to ${printQuantity(Math.abs(currentA) * (1 + band), "A")}`,
      isRead: true,
      expectedValue: Math.abs(currentA),
      unit: "A",
      least: Math.abs(currentA) * (1 - band),
      most: Math.abs(currentA) * (1 + band),
    },
    {
      ...base,
      what: `${part}: volts at the posts`,
      expected: printQuantity(terminalV, "V"),
      limit: "",
      isRead: true,
      expectedValue: terminalV,
      unit: "V",
    },
  ]);
}

/** Volts a load gets; its limit is what is left of the battery's volts when the drop allowed it is gone. */
function loadRow(
  { job, check }: PaperInput,
  solution: OperateSolution,
  ref: string,
  base: Base,
): readonly TestRow[] {
  const load = loadsOf(job).find((one) => one.ref === ref);
  const lamp = solution.lamps.find(({ part, filament }) => `${part}:${filament}` === ref);
  const other = solution.loads.find(({ part, element }) => `${part}:${element}` === ref);
  const found = lamp ?? other;
  if (load === undefined || found === undefined || found.why !== undefined) return [];
  const v = Math.abs(found.v);
  const row = check.loads.find((one) => one.load === ref);
  const [battery] = solution.batteries;
  const isDirect = found.kind !== "ac";
  const least =
    row === undefined || battery === undefined || !isDirect
      ? undefined
      : battery.terminalV - row.limitV;
  return [
    {
      ...base,
      what: `${load.part.id}: ${loadReader(job)(ref)}`,
      note: `${load.pins.map((pin) => pin.replace(".", " ")).join(" to ")}, ${printQuantity(Math.abs(found.currentA), "A")}${isDirect ? "" : ", AC"}`,
      expected: printQuantity(v, "V"),
      limit: least === undefined ? "" : `least ${printQuantity(least, "V")}`,
      isRead: true,
      expectedValue: v,
      unit: "V",
      least,
    },
  ];
}
