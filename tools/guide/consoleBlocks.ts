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

/** Whether an output matches what the document shows, lines left out included. */
export function matchesShown(actual: string, shown: string): boolean {
  const pieces = shown.split(/^…\n/m);
  let at = 0;
  return pieces.every((piece, i) => {
    const found = i === 0 ? (actual.startsWith(piece) ? 0 : -1) : actual.indexOf(piece, at);
    at = found + piece.length;
    if (i === pieces.length - 1 && !shown.endsWith("…\n"))
      return found !== -1 && actual.endsWith(piece);
    return found !== -1;
  });
}
