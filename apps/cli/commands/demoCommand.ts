import { argumentRefusal, refuse } from "../refuse.ts";
import type { ExitCode, World } from "../world.ts";
import { commonFields } from "./command.ts";

/** Names of the demos, shortest way to say what each shows. */
function demoList(world: World): readonly { readonly name: string; readonly title: string }[] {
  return world
    .listShipped("demos")
    .filter((file) => file.endsWith(".json"))
    .map((file) => {
      const { name } = JSON.parse(new TextDecoder().decode(world.shipped(`demos/${file}`)));
      return { name: file.replace(/\.json$/, ""), title: String(name) };
    })
    .sort((left, right) => (left.name < right.name ? -1 : 1));
}

/** `copperwright demo [NAME] [--out FILE]`: the list, or one ready job as text. */
export function demoCommand(
  world: World,
  name: string | undefined,
  options: { readonly out?: string },
): ExitCode {
  const demos = demoList(world);
  if (name === undefined) {
    const width = Math.max(...demos.map((demo) => demo.name.length));
    for (const { name: each, title } of demos) {
      const line = `${each.padEnd(width)}  ${title}`;
      world.out(`${line.length > 100 ? `${line.slice(0, 99)}…` : line}\n`);
    }
    return 0;
  }
  if (!demos.some((demo) => demo.name === name)) {
    const refusal = argumentRefusal(
      "NAME",
      name,
      "There is no demo of that name.",
      `Choose one of: ${demos.map((demo) => demo.name).join(", ")}.`,
    );
    return refuse(world, [refusal], { json: false, common: commonFields("demo", null) });
  }
  const text = new TextDecoder().decode(world.shipped(`demos/${name}.json`));
  if (options.out === undefined) {
    world.out(text);
    return 0;
  }
  const written = world.writeText(options.out, text);
  if (!written.ok) {
    const refusal = argumentRefusal(
      "--out",
      options.out,
      `The file could not be written: ${written.why}.`,
      "Choose a folder that exists and that you may write to.",
    );
    return refuse(world, [refusal], { json: false, common: commonFields("demo", null) });
  }
  world.out(`Wrote ${options.out}\n`);
  return 0;
}
