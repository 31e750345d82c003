import { zipSync } from "fflate";
import { type ReactNode, useState } from "react";
import { saveFile } from "../../device/saveFile.ts";
import { askLong } from "../../engine/engineClient.ts";
import { faultText } from "../../engine/faultText.ts";
import { noteStep, say, useBench } from "../../store/benchStore.ts";
import { useJobText } from "../../store/useJobText.ts";
import { proveForPapers } from "./keptProof.ts";
import type { MadeFile, PaperChoice } from "./papersAnswers.ts";
import { printBytes } from "./usePaperFile.ts";

type Making =
  | { readonly kind: "none" }
  | { readonly kind: "making"; readonly ratio: number; readonly word: string }
  | { readonly kind: "made"; readonly files: readonly MadeFile[]; readonly of: string };

/** Makes every file of the pack in the background, then saves or prints one or all. */
export function MakePapers({ choice }: { choice: PaperChoice }): ReactNode {
  const text = useJobText();
  const name = useBench((bench) => bench.document?.job.id ?? "job");
  const [making, setMaking] = useState<Making>({ kind: "none" });
  const asked = `${JSON.stringify(choice)} ${text}`;
  const make = async (): Promise<void> => {
    if (text === null) return;
    setMaking({ kind: "making", ratio: 0, word: "proving it" });
    try {
      await proveForPapers(text);
      const files = await askLong(text, "papersPack", choice, (ratio, word) =>
        setMaking({ kind: "making", ratio, word }),
      );
      setMaking({ kind: "made", files, of: asked });
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
  const { files, of } = making;
  return <MadePapers files={files} name={name} isOld={of !== asked} again={() => void make()} />;
}

function MadePapers({
  files,
  name,
  isOld,
  again,
}: {
  files: readonly MadeFile[];
  name: string;
  /** Job or paper have changed since. */
  isOld: boolean;
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
      {isOld && <p role="status">Made before the last change of job or paper.</p>}
      <div className="care-row">
        <button type="button" className={isOld ? "act small" : "act filled"} onClick={all}>
          save all {files.length} files
        </button>
        <button type="button" className={isOld ? "act filled" : "act small"} onClick={again}>
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
              <button type="button" className="act small" onClick={() => printBytes(bytes)}>
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
