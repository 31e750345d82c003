import { ENGINE_VERSION } from "@copperwright/engine";
import { Command, CommanderError } from "commander";
import { checkCommand } from "./commands/checkCommand.ts";
import { commonFields, printJson } from "./commands/command.ts";
import { convertCommand } from "./commands/convertCommand.ts";
import { demoCommand } from "./commands/demoCommand.ts";
import { openCommand } from "./commands/openCommand.ts";
import { operateCommand, spiceCommand } from "./commands/operateCommand.ts";
import { packCommand } from "./commands/packCommand.ts";
import { proveCommand } from "./commands/proveCommand.ts";
import { supplyCommand } from "./commands/supplyCommand.ts";
import { bundleCommand, wireCommand } from "./commands/wireCommand.ts";
import { argumentRefusal } from "./refuse.ts";
import type { ExitCode, World } from "./world.ts";

/** Options `operate` and `spice` share: what the switches, the engine and the faults are. */
function withState(command: Command): Command {
  return command
    .option("--set <pairs...>", "switch positions, PART=POSITION; the rest stand at rest")
    .option("--engine <state>", "stopped, cranking, or a speed in rpm")
    .option("--flash <on|off>", "the flasher lit or dark")
    .option("--held <relays...>", "relays that were pulled before")
    .option("--open <places...>", "broken wires (W12) or pins (PART.PIN)")
    .option(
      "--short <places...>",
      "touching conductors: PIN, PIN=PIN, PIN:OHM; a lone pin touches the frame",
    )
    .option("--ohm <places...>", "extra resistance: W12=0.5 or PART.PIN=0.5")
    .option("--battery <state>", "full, half, weak, or volts at rest")
    .option("--ambient <C>", "air temperature")
    .option("--lamp-exponent <n>", "1 takes lamps as fixed resistances")
    .option("--aged", "contacts and joints as they are after years");
}

function makeProgram(world: World, finish: (code: ExitCode | Promise<ExitCode>) => void): Command {
  const program = new Command("copperwright");
  program
    .description(
      "From what is on the machine to a loom that is proven safe, built, tested and documented.",
    )
    .version(ENGINE_VERSION)
    .exitOverride()
    .configureOutput({ writeOut: (text) => world.out(text), writeErr: () => {} })
    .showSuggestionAfterError(true);
  addFirstCommands(program, world, finish);
  program
    .command("check <JOB>")
    .description("verdict and findings")
    .option("--json", "one JSON object")
    .action((path, options) => finish(checkCommand(world, path, options)));
  program
    .command("prove <JOB>")
    .description("every state, every open and every short: does each wire outlive each fault")
    .option("--json", "one JSON object")
    .action((path, options) => finish(proveCommand(world, path, options)));
  program
    .command("pack <JOB>")
    .description("everything needed to build and test the loom, as PDF and CSV in a folder")
    .requiredOption("--out <folder>", "where to put it: an empty folder or a former pack")
    .option("--paper <size>", "a4, a3 or letter", "a4")
    .option("--ink <ink>", "colour, or black for a printer that breaks greys into dots", "colour")
    .option("--stock <file>", "a shop's price list as CSV: prices on the shopping list")
    .option("--board-width <mm>", "greatest width of a full-size loom board; 1200 unless said")
    .option("--margin <mm>", "what the printer leaves white on each side of a board's sheets; 10")
    .option("--overlap <mm>", "how far a board's sheets lie over each other; 10")
    .option("--printer <name>", "correct the boards by the readings kept for this printer")
    .option("--bar-across <mm>", "the 100 mm bar as measured across on its last sheet; kept")
    .option("--bar-down <mm>", "the same bar measured down; kept")
    .option("--anew", "forget what was kept: the bar is of a sheet made without --printer")
    .option("--json", "one JSON object")
    .action((path, options) => finish(packCommand(world, path, options)));
  withState(program.command("operate <JOB>"))
    .description("one state of the machine: volts, amps, light, relays, fuses")
    .option("--json", "one JSON object")
    .action((path, options) => finish(operateCommand(world, path, options)));
  withState(program.command("spice <JOB>"))
    .description("the same state as text for a general circuit simulator")
    .option("--relays <settled|live>", "relays as contacts, or as coils and switches")
    .action((path, options) => finish(spiceCommand(world, path, options)));
  addSupplyCommands(program, world, finish);
  addWireCommands(program, world, finish);
  return program;
}

function addFirstCommands(
  program: Command,
  world: World,
  finish: (code: ExitCode | Promise<ExitCode>) => void,
): void {
  program
    .command("open [FOLDER]")
    .description("the bench: all the work on a screen, kept in a folder of this machine")
    .option("--port <n>", "another port than the usual one")
    .option("--no-browser", "print the address and open no browser")
    .option("--postgres <url>", "keep the work in a PostgreSQL database")
    .action((folder, options) => finish(openCommand(world, folder, options)));
  program
    .command("demo [NAME]")
    .description("a ready job; without a name, the list")
    .option("--out <file>", "write it to a file")
    .action((name, options) => finish(demoCommand(world, name, options)));
}

function addSupplyCommands(
  program: Command,
  world: World,
  finish: (code: ExitCode | Promise<ExitCode>) => void,
): void {
  program
    .command("supply <JOB>")
    .description("charging balance by speed, rides, starting, standing drain")
    .option("--volts <V>", "battery volts the balance is struck at")
    .option("--ambient <C>", "air temperature")
    .option("--add <W...>", "think of loads added at the battery: 36")
    .option("--led <lamps...>", "think of lamps swapped for light-emitting ones: REAR=3")
    .option("--trace <file>", "a ride of your own: CSV of timeS,speedRpm,lights")
    .option("--start <percent>", "charge at the start of a ride")
    .option("--lamp-exponent <n>", "1 takes lamps as fixed resistances")
    .option("--aged", "contacts and joints as they are after years")
    .option("--json", "one JSON object")
    .action((path, options) => finish(supplyCommand(world, path, options)));
  program
    .command("convert <JOB>")
    .description("to 6 or 12 V, or to the other earth: every part, fuse and wire, and the new job")
    .option("--to <V>", "6 or 12")
    .option("--earth <pole>", "negative or positive")
    .option("--out <file>", "write the new job to a file")
    .option("--stock <file>", "a shop's price list as CSV: what the conversion costs")
    .option("--json", "one JSON object")
    .action((path, options) => finish(convertCommand(world, path, options)));
}

function addWireCommands(
  program: Command,
  world: World,
  finish: (code: ExitCode | Promise<ExitCode>) => void,
): void {
  program
    .command("wire <DESCRIPTION...>")
    .description(
      'read a wire any way a person names it: 32/0.20, "1 mm2", "16 AWG", "copper 1.2 mm"',
    )
    .option("--amps <A>", "current it has to carry")
    .option("--volts <V>", "system volts")
    .option("--length <m>", "length in metres")
    .option("--one-way", "the length is one way only; the return is another wire")
    .option("--drop <V|%>", "volt drop allowed, such as 0.3 or 3%")
    .option("--ambient <C>", "air temperature")
    .option("--bundle <n>", "wires in the bundle")
    .option("--json", "one JSON object")
    .action((words, options) => finish(wireCommand(world, words.join(" "), options)));
  program
    .command("bundle <OD...>")
    .description("diameter of a loom from outside diameters in mm: 2.1x5 2.8 3.4")
    .option("--json", "one JSON object")
    .action((words, options) => finish(bundleCommand(world, words, options)));
}

/** Reads the words, runs the command, returns what the shell is told. Only here is a fault of ours caught. */
export async function runCommandLine(world: World, words: readonly string[]): Promise<ExitCode> {
  let outcome: ExitCode | Promise<ExitCode> = 0;
  const program = makeProgram(world, (code) => {
    outcome = code;
  });
  try {
    if (words.length === 0) {
      world.out(program.helpInformation());
      return 2;
    }
    await program.parseAsync(words, { from: "user" });
    return await outcome;
  } catch (error) {
    if (error instanceof CommanderError) return wordsRefused(world, error, words);
    const what = error instanceof Error ? (error.stack ?? error.message) : String(error);
    world.err(`A fault of ours, not of the job: ${what.split("\n").slice(0, 3).join(" | ")}\n`);
    world.err("Nothing was written. Please report it with the job file.\n");
    return 3;
  }
}

function wordsRefused(world: World, error: CommanderError, words: readonly string[]): ExitCode {
  if (error.exitCode === 0) return 0;
  const message = error.message
    .replace(/^error: /, "")
    .split("\n")
    .join(" ");
  const remedy =
    `Run copperwright ${words[0] === undefined ? "" : "help "}to see the commands.`.replace(
      "  ",
      " ",
    );
  if (words.includes("--json")) {
    const refusal = argumentRefusal("command line", words.join(" "), message, remedy);
    world.out(printJson({ ...commonFields(words[0] ?? "help", null), refusals: [refusal] }));
  } else {
    world.err(`${message}\n${remedy}\n`);
  }
  return 2;
}
