import { nodeWorld } from "./nodeWorld.ts";
import { runCommandLine } from "./runCommandLine.ts";

process.exitCode = await runCommandLine(nodeWorld, process.argv.slice(2));
