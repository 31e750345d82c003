/** One executed example in a document: the command after `$ `, the output printed below it. */
export interface ConsoleBlock {
  readonly command: string;
  readonly expected: string;
  /** Start and end of the output in the text of the document. */
  readonly from: number;
  readonly to: number;
}

const BLOCK = /```console\n\$ ([^\n]+)\n([\s\S]*?)```/g;

/** Every ```console block that shows one command and what it prints. `…` alone on a line stands for lines left out. */
export function consoleBlocks(text: string): readonly ConsoleBlock[] {
  return [...text.matchAll(BLOCK)].map((match) => {
    const to = match.index + match[0].length - 3;
    return { command: match[1]!, expected: match[2]!, from: to - match[2]!.length, to };
  });
}

/** Splits a command line at spaces, keeping "quoted words" together. */
export function shellWords(command: string): readonly string[] {
  return [...command.matchAll(/"([^"]*)"|'([^']*)'|(\S+)/g)].map(
    (match) => match[1] ?? match[2] ?? match[3] ?? "",
  );
}

/** Whether an output is what the document shows. Lines left out are marked by `…` alone on a line; some lines must be shown. */
export function matchesShown(actual: string, shown: string): boolean {
  const pieces = shown.split(/^…\n/m);
  if (pieces.length === 1) return actual === shown;
  if (pieces.every((piece) => piece === "")) return false;
  let at = 0;
  return pieces.every((piece, i) => {
    if (piece === "") return true;
    const found = i === 0 ? (actual.startsWith(piece) ? 0 : -1) : actual.indexOf(piece, at);
    if (found === -1) return false;
    at = found + piece.length;
    return i < pieces.length - 1 || at === actual.length;
  });
}
