import { close, runChecks } from "./check.ts";
import { installNeeds } from "./needs.ts";

const missing = installNeeds();
if (missing.length > 0) {
  for (const { program, debianPackage, why } of missing) {
    console.error(`${program} is missing (${why}). Install it: apt-get install ${debianPackage}`);
  }
  console.error("The tests need these programs and skip nothing.");
  process.exit(1);
}
close(runChecks());
