import { type ReactNode, useState } from "react";
import { useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import type { FindingRow } from "./findingRows.ts";

/** A reason written under a finding that must stay: who answers for it. A stop cannot be answered for. */
export function Accepting({ row }: { row: FindingRow }): ReactNode {
  const { finding, from } = row;
  const [reason, setReason] = useState("");
  const job = useBench((bench) => bench.document!.job);
  const who = useBench((bench) => bench.visitor?.who ?? "owner");
  const accepted = job.decisions.accepted ?? [];
  const { code, subject, also, severity } = finding;
  if (severity === "stop" || !finding.acceptable) {
    return <p className="note">A stop cannot be accepted; it has to be mended.</p>;
  }
  if (from === "proof") return null;
  const others = accepted.filter((one) => !(one.code === code && one.subject === subject.id));
  const put = (value: typeof accepted, what: string): Promise<boolean> =>
    edit(what, { op: "set", list: "job", path: ["decisions", "accepted"], value });
  if (finding.accepted !== null) {
    return (
      <div className="proof-accept">
        <p>
          Accepted by {finding.accepted.by}: {finding.accepted.reason}
        </p>
        <button
          type="button"
          className="act"
          onClick={() => void put(others, `take back the acceptance at ${subject.id}`)}
        >
          take it back
        </button>
      </div>
    );
  }
  const accept = (): void => {
    const date = new Date().toISOString().slice(0, 10);
    const item = {
      id: freeId(accepted),
      code,
      subject: subject.id,
      also,
      reason: reason.trim(),
      by: who,
      date,
    };
    void put([...others, item] as typeof accepted, `accept ${code} at ${subject.id}`);
  };
  return (
    <div className="proof-accept">
      <label className="entry">
        <span className="note">a reason, if it must stay as it is</span>
        <input
          className="field"
          value={reason}
          maxLength={200}
          onChange={(event) => setReason(event.target.value)}
        />
      </label>
      <button type="button" className="act" disabled={reason.trim() === ""} onClick={accept}>
        accept it
      </button>
    </div>
  );
}

function freeId(accepted: readonly { readonly id: string }[]): string {
  const taken = new Set(accepted.map(({ id }) => id));
  let count = accepted.length + 1;
  while (taken.has(`K${count}`)) count++;
  return `K${count}`;
}
