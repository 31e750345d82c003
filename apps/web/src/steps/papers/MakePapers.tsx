import { zipSync } from "fflate";
import { type ReactNode, useState } from "react";
import { saveFile } from "../../device/saveFile.ts";
import { askLong } from "../../engine/engineClient.ts";
import { faultText } from "../../engine/faultText.ts";
import { noteStep, say, useBench } from "../../store/benchStore.ts";
import { useJobText } from "../../store/useJobText.ts";
import { proveForPapers } from "./keptProof.ts";
import type { MadeFile, PaperChoice } from "./papersAnswers.ts";

type Making =
  | { readonly kind: "none" }
  | { readonly kind: "making"; readonly ratio: number; readonly word: string }
  | { readonly kind: "made"; readonly files: readonly MadeFile[] };

/** Makes every file of the pack in the background, then saves or prints one or all. */
export function MakePapers({ choice }: { choice: PaperChoice }): ReactNode {
  const text = useJobText();
  const name = useBench((bench) => bench.document?.job.id ?? "job");
  const [making, setMaking] = useState<Making>({ kind: "none" });
  const make = async (): Promise<void> => {
    if (text === null) return;
    setMaking({ kind: "making", ratio: 0, word: "proving it" });
    try {
      await proveForPapers(text);
      const files = await askLong(text, "papersPack", choice, (ratio, word) =>
        setMaking({ kind: "making", ratio, word }),
      );
      setMaking({ kind: "made", files });
      noteStep("papers", { text: `${files.length} files`, box: "ticked" });
    } catch (error) {
      setMaking({ kind: "none" });
      say(`The papers could not be made: ${faultText(error)}`);
    }
  };
  if (making.kind === "making") {
    return (
      <p role="status" className="making">
        <progress value={making.ratio} aria-label="Papers made" /> {making.word}
      </p>
    );
  }
  if (making.kind === "none") {
    return (
      <button type="button" className="act filled" onClick={() => void make()}>
        make all papers
      </button>
    );
  }
  return <MadePapers files={making.files} name={name} again={() => void make()} />;
}

function MadePapers({
  files,
  name,
  again,
}: {
  files: readonly MadeFile[];
  name: string;
  again: () => void;
}): ReactNode {
  const all = (): void => {
    const zip = zipSync(Object.fromEntries(files.map((file) => [file.name, file.bytes])), {
      level: 6,
    });
    saveFile(`${name}-papers.zip`, zip, "application/zip");
  };
  return (
    <div className="made">
      <div className="care-row">
        <button type="button" className="act filled" onClick={all}>
          save all {files.length} files
        </button>
        <button type="button" className="act small" onClick={again}>
          make again
        </button>
      </div>
      <ul className="made-files">
        {files.map(({ name: file, bytes }) => (
          <li key={file} className="care-row">
            <span>{file}</span>
            <button
              type="button"
              className="act small"
              onClick={() => saveFile(file, bytes, typeOf(file))}
            >
              save
            </button>
            {file.endsWith(".pdf") && (
              <button type="button" className="act small" onClick={() => print(bytes)}>
                print
              </button>
            )}
          </li>
        ))}
      </ul>
    </div>
  );
}

const TYPES: Readonly<Record<string, string>> = {
  pdf: "application/pdf",
  csv: "text/csv",
  json: "application/json",
  svg: "image/svg+xml",
};
const typeOf = (file: string): string =>
  TYPES[file.split(".").at(-1) ?? ""] ?? "application/octet-stream";

/** Opens the file in a page of its own, where the reader's own print command keeps the scale at 100 %. */
function print(bytes: Uint8Array): void {
  const address = URL.createObjectURL(
    new Blob([bytes as Uint8Array<ArrayBuffer>], { type: "application/pdf" }),
  );
  open(address, "_blank", "noopener");
  say(
    "Print at 100 %, with no fitting to the page, and measure the 100 mm bar before trusting the sheet.",
  );
  setTimeout(() => URL.revokeObjectURL(address), 600_000);
}
