import { type Sheet, sheetRoom } from "../../drawing/index.ts";
import { fewestSheets } from "../fewestSheets.ts";
import type { PackPaper } from "../packPaper.ts";
import type { PaperInput } from "../paperInput.ts";
import { boxWords } from "./boxWords.ts";
import { feedTrees } from "./feedTree.ts";
import { loadCurrents } from "./loadCurrents.ts";
import { treePages } from "./treeDrawing.ts";

/** What a customer understands in two minutes: what feeds what, from the source to the lamps. */
export function blockDiagramPaper(input: PaperInput, name: string): PackPaper {
  const { job } = input;
  const workingA = loadCurrents(input.states);
  const trees = feedTrees(job);
  const head = {
    title: "Block diagram",
    lead: "Left to right: where current comes from, what guards it, what switches it, what uses it. Bold lines: live with everything switched off. Amps as computed at work.",
  };
  const sheets = fewestSheets(
    input,
    (paper) => {
      const { content } = sheetRoom(paper, input.info, head);
      const pages = treePages(trees, (box) => boxWords(job, box, workingA), content);
      return pages.map(
        (marks, i): Sheet => ({
          paper,
          documentName: "block diagram",
          head,
          bookmark: i === 0 ? [head.title] : [head.title, `continued ${i + 1}`],
          marks,
        }),
      );
    },
    ["landscape", "portrait"],
  );
  return {
    name,
    title: "Block diagram",
    sheets,
    rows: null,
    drawings: sheets.map((_, i) => (sheets.length > 1 ? `${name}-${i + 1}` : name)),
  };
}
