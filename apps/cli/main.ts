import { compileLess } from "./compileLess.ts";
import { nodeWorld } from "./nodeWorld.ts";
import { runCommandLine } from "./runCommandLine.ts";

const words = process.argv.slice(2);
if (words[0] === "pack") compileLess();
process.exitCode = await runCommandLine(nodeWorld, words);
