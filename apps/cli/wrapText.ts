/** Breaks a paragraph at spaces so that no line is longer than `widthCount` characters. A word that is longer stands alone. */
export function wrapText(text: string, widthCount: number, indent = ""): string {
  const lines: string[] = [];
  for (const paragraph of text.split("\n")) {
    let line = "";
    for (const word of paragraph.split(/ +/)) {
      const longer = line === "" ? word : `${line} ${word}`;
      if (longer.length > widthCount - indent.length && line !== "") {
        lines.push(indent + line);
        line = word;
      } else {
        line = longer;
      }
    }
    lines.push(indent + line);
  }
  return lines.join("\n");
}
