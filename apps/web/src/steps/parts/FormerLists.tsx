import { type ReactNode, useEffect, useState } from "react";
import { server } from "../../server/serverApi.ts";
import { say } from "../../store/benchStore.ts";
import { type PriceList, putPrices } from "./priceList.ts";
import { whose } from "./StockFile.tsx";

interface FormerList extends Omit<PriceList, "text"> {
  readonly isNone: boolean;
}

/** Every list the shop has had, newest first; any of them can be put in again. */
export function FormerLists({ list: { id: inUse, savedAt } }: { list: PriceList }): ReactNode {
  const [isOpen, setOpen] = useState(false);
  const [lists, setLists] = useState<readonly FormerList[] | string>([]);
  useEffect(() => {
    if (!isOpen) return;
    void server<{ lists: readonly FormerList[] }>("GET", "/prices/lists").then((answer) => {
      if (answer.kind === "ok") setLists(answer.value.lists);
      else
        setLists(answer.kind === "away" ? "The server cannot be reached." : answer.refusal.message);
    });
  }, [isOpen, inUse, savedAt]);
  return (
    <details className="former-lists" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>earlier lists</summary>
      {typeof lists === "string" ? (
        <p className="note">{lists}</p>
      ) : (
        <ul>
          {lists.map((list) => (
            <li key={list.id} className="care-row">
              <span>{whose(list)}</span>
              {list.id === inUse ? (
                <span className="note">in use</span>
              ) : (
                <button type="button" className="act small" onClick={() => void putAgain(list)}>
                  put in again
                </button>
              )}
            </li>
          ))}
        </ul>
      )}
    </details>
  );
}

async function putAgain({ id, name }: FormerList): Promise<void> {
  const answer = await server<{ list: PriceList }>("GET", `/prices/lists/${id}`);
  if (answer.kind === "ok") return putPrices(name, answer.value.list.text);
  say(
    answer.kind === "away"
      ? "The server cannot be reached, so the earlier list cannot be fetched."
      : answer.refusal.message,
  );
}
