import { type ReactNode, useCallback, useEffect, useState } from "react";
import { createPortal } from "react-dom";
import { server } from "../server/serverApi.ts";
import { takeServerRevision } from "../server/watching.ts";
import { say, useBench } from "../store/benchStore.ts";
import { inTurn } from "../store/editing.ts";
import { Slip } from "./Slip.tsx";
import { versionText } from "./versionText.ts";

interface Conflict {
  readonly id: string;
  readonly kind: string;
  readonly list: string;
  readonly item?: string;
  readonly path: readonly (string | number)[];
  readonly mine?: unknown;
  readonly theirs?: unknown;
  readonly inUse: "mine" | "theirs";
  readonly mineBy: string;
  readonly theirsBy: string;
}

/** What two people changed so that both cannot stand: both versions with their makers, and a choice. The one in use stays usable meanwhile. */
export function Conflicts(): ReactNode {
  const key = useBench((bench) => bench.document?.key ?? null);
  const revision = useBench((bench) => bench.document?.baseRevision ?? 0);
  const [conflicts, setConflicts] = useState<readonly Conflict[]>([]);
  const [isOpen, setOpen] = useState(false);
  const read = useCallback(async (): Promise<void> => {
    if (key === null) return;
    const answer = await server<{ conflicts: readonly Conflict[] }>(
      "GET",
      `/jobs/${key}/conflicts`,
    );
    if (answer.kind === "ok") setConflicts(answer.value.conflicts);
  }, [key]);
  useEffect(() => {
    void read();
  }, [read, revision]);
  if (conflicts.length === 0 || key === null) return null;
  const settle = async (id: string, take: "mine" | "theirs"): Promise<void> => {
    const answer = await server("POST", `/jobs/${key}/conflicts/${id}/settle`, { take });
    if (answer.kind === "refused") say(answer.refusal.message);
    if (answer.kind === "away") say("Choosing needs the server; it cannot be reached now.");
    if (answer.kind === "ok") await inTurn(() => takeServerRevision(key));
    await read();
  };
  return (
    <>
      <button type="button" className="act small" onClick={() => setOpen(true)}>
        two versions: choose {conflicts.length === 1 ? "one" : `in ${conflicts.length} places`}
      </button>
      {/* Out of the card, whose cut corner would cut the slip too. */}
      {isOpen &&
        createPortal(
          <Slip
            title="Two versions"
            label="Two versions of the same thing"
            onClose={() => setOpen(false)}
          >
            <ul>
              {conflicts.map((conflict) => (
                <Choice key={conflict.id} conflict={conflict} settle={settle} />
              ))}
            </ul>
          </Slip>,
          document.body,
        )}
    </>
  );
}

type Settle = (id: string, take: "mine" | "theirs") => Promise<void>;

function Choice({ conflict, settle }: { conflict: Conflict; settle: Settle }): ReactNode {
  const { id, list, item, path, mine, theirs, inUse, mineBy, theirsBy } = conflict;
  const sides = [
    { take: "theirs" as const, value: theirs, by: theirsBy },
    { take: "mine" as const, value: mine, by: mineBy },
  ];
  return (
    <li className="choice">
      <b>
        {list} {item ?? ""} {path.join(" ")}
      </b>
      {sides.map(({ take, value, by }) => (
        <button
          key={take}
          type="button"
          className="act small"
          onClick={() => void settle(id, take)}
        >
          {versionText(value)}{" "}
          <span className="note">
            by {by}
            {inUse === take ? ", in use" : ""}
          </span>
        </button>
      ))}
    </li>
  );
}
