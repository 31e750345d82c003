import { printQuantity } from "../../units/index.ts";
import { loadReader } from "../loadText.ts";
import type { PaperInput } from "../paperInput.ts";
import type { TestRow } from "./testRow.ts";

/** Load by load: the largest drop found in any state, live side and earth side, to be measured in that state. */
export function dropRows({ job, check }: PaperInput): readonly TestRow[] {
  const name = loadReader(job);
  return check.loads
    .filter(({ worstDropV }) => worstDropV !== null)
    .map(
      (row): TestRow => ({
        section: "drops",
        group: "",
        what: `${row.load.split(":")[0]}: ${name(row.load)}`,
        note: `${argumentWords(row.state)}; live side ${drop(row.feedV)}, earth side ${drop(row.returnV)}`,
        expected: printQuantity(row.worstDropV!, "V"),
        limit: `most ${printQuantity(row.limitV, "V")}`,
        isRead: true,
        expectedValue: row.worstDropV,
        unit: "V",
        most: row.limitV,
      }),
    );
}

const drop = (v: number | null): string => (v === null ? "not known" : printQuantity(v, "V"));

/** Arguments of `operate` as words: "KEY ON, LSW H, engine 4000". */
function argumentWords(words: readonly string[]): string {
  const options = words.slice(words.findIndex((word) => word.startsWith("--")));
  if (!words.some((word) => word.startsWith("--"))) return "everything at rest";
  const read = options.flatMap((word, i) => {
    if (word.startsWith("--")) return [];
    const option = options[i - 1];
    if (option === "--set") return [word.replace("=", " ")];
    if (option === "--flash") return [word === "on" ? "flasher lit" : ""];
    return [`${(option ?? "").replace("--", "")} ${word}`.trim()];
  });
  return read.filter(Boolean).join(", ") || "everything at rest";
}
