import { zipSync } from "fflate";
import { type ReactNode, useState } from "react";
import { saveFile } from "../../device/saveFile.ts";
import { askLong } from "../../engine/engineClient.ts";
import { faultText } from "../../engine/faultText.ts";
import { noteStep, say, useBench } from "../../store/benchStore.ts";
import { useJobText } from "../../store/useJobText.ts";
import { useProofRun } from "../proof/proofRun.ts";
import { proveForPapers } from "./keptProof.ts";
import type { MadeFile, PaperChoice } from "./papersAnswers.ts";
import { printBytes } from "./usePaperFile.ts";

type Making =
  | { readonly kind: "none" }
  | { readonly kind: "proving" }
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
    setMaking({ kind: "proving" });
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
  if (making.kind === "proving") return <Proving />;
  if (making.kind === "making") return <Progress ratio={making.ratio} word={making.word} />;
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

/** The proof goes into the pack, so it comes first; where there is one already it takes no time. */
function Proving(): ReactNode {
  const ratio = useProofRun((run) => run.doneRatio);
  return <Progress ratio={ratio} word="proving it" />;
}

function Progress({ ratio, word }: { ratio: number; word: string }): ReactNode {
  return (
    <p role="status" className="making">
      <progress value={ratio} aria-label="Papers made" /> {word}
    </p>
  );
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
              aria-label={`save ${file}`}
              onClick={() => saveFile(file, bytes, typeOf(file))}
            >
              save
            </button>
            {file.endsWith(".pdf") && (
              <button
                type="button"
                className="act small"
                aria-label={`print ${file}`}
                onClick={() => printBytes(bytes)}
              >
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
