import { argumentRefusal, refuse } from "../refuse.ts";
import type { BenchPlace, ExitCode, World } from "../world.ts";
import { wrapText } from "../wrapText.ts";

/** Always the same, since a browser keeps what it holds for an address, its port included, apart from every other. */
const USUAL_PORT = 7423;
/** Sharing takes the two after it. */
const LAST_PORT = 65_533;

export interface OpenOptions {
  readonly port?: string;
  readonly browser: boolean;
  readonly postgres?: string;
}

/** `copperwright open [FOLDER] [--port N] [--no-browser] [--postgres URL]`: the bench, until it is stopped. */
export async function openCommand(
  world: World,
  folder: string | undefined,
  options: OpenOptions,
): Promise<ExitCode> {
  const port = readPort(options.port);
  if (port === null) return portRefused(world, options.port ?? "");
  const opened = await world.bench.open(placeOf(world, folder, port, options.postgres));
  if (!opened.ok) {
    world.err(`${wrapText(opened.why, 100)}\n`);
    return 2;
  }
  const { bench } = opened;
  const isShown = options.browser && world.bench.show(bench.launchAddress());
  world.out(
    `The bench is open${isShown ? " in your browser" : ""}. Its address on this machine:\n`,
  );
  world.out(`  ${bench.address}\n`);
  const shared = bench.sharedAddress();
  if (shared !== null) world.out(`Paired devices on the network find it at ${shared}\n`);
  world.out(`The work is kept in ${bench.where}. Ctrl+C closes the bench.\n`);
  await world.bench.untilStopped();
  await bench.close();
  world.out("The bench is closed. Everything saved is kept.\n");
  return 0;
}

function readPort(word: string | undefined): number | null {
  if (word === undefined) return USUAL_PORT;
  if (!/^\d{1,5}$/.test(word)) return null;
  const port = Number(word);
  return port <= LAST_PORT ? port : null;
}

function portRefused(world: World, found: string): ExitCode {
  const refusal = argumentRefusal(
    "--port",
    found,
    `A port is a number from 0 (any that is free) to ${LAST_PORT}.`,
    `Leave --port out for ${USUAL_PORT}, or give a number.`,
  );
  return refuse(world, [refusal], { json: false, common: {} });
}

function placeOf(
  { bench }: World,
  folder: string | undefined,
  port: number,
  postgres: string | undefined,
): BenchPlace {
  const postgresUrl = postgres ?? bench.environment("COPPERWRIGHT_POSTGRES");
  return {
    folder: folder ?? bench.defaultFolder(),
    port,
    ...(postgresUrl === undefined || postgresUrl === "" ? {} : { postgresUrl }),
  };
}
