import { type ReactNode, useState } from "react";
import { server } from "../../server/serverApi.ts";
import { say } from "../../store/benchStore.ts";

/** What the server says of sharing. */
export interface Sharing {
  readonly isOn: boolean;
  readonly address: string | null;
  readonly tls: "none" | "own-authority" | "shop";
  readonly plainAddress: string | null;
  readonly secureAddress: string | null;
  readonly authority: { readonly endsAt: string; readonly sha256: string } | null;
}

/** How phones come to trust the bench: nothing, an authority of its own, or the shop's certificate; each can be taken back. */
export function Authority({
  sharing,
  refresh,
}: {
  sharing: Sharing;
  refresh: () => Promise<void>;
}): ReactNode {
  const ask = async (path: string, body: object, done: string): Promise<void> => {
    const answer = await server("POST", path, body);
    if (answer.kind === "away") say("The server cannot be reached; nothing was changed.");
    else say(answer.kind === "refused" ? answer.refusal.message : done);
    await refresh();
  };
  const make = () =>
    ask("/sharing/authority", {}, "A certificate of this bench was made. Each phone installs it.");
  if (sharing.tls === "none") {
    const useShops = () =>
      ask("/sharing", { tls: "shop" }, "The shop's certificate is used from now on.");
    return (
      <div className="care-row">
        <Act word="let phones work offline (makes a certificate)" act={make} />
        <Act word="use the shop's certificate" act={useShops} />
      </div>
    );
  }
  const stop = () =>
    sharing.tls === "shop"
      ? ask("/sharing", { tls: "none" }, "The shop's certificate is no longer used.")
      : ask("/sharing/authority/remove", {}, "The certificate is gone. Remove it from each phone.");
  return (
    <>
      {sharing.authority !== null && sharing.tls === "own-authority" && (
        <Fingerprint sharing={sharing} {...sharing.authority} />
      )}
      <p>
        Then the phone opens <b>{sharing.secureAddress}</b> and is paired there.
      </p>
      <div className="care-row">
        {sharing.tls === "own-authority" && (
          <Twice word="make a new certificate" sure="yes, phones install it anew" act={make} />
        )}
        <Twice
          word="take the certificate back"
          sure="yes, phones only look and tick again"
          act={stop}
        />
      </div>
    </>
  );
}

function Fingerprint({
  sharing: { plainAddress },
  endsAt,
  sha256,
}: {
  sharing: Sharing;
  endsAt: string;
  sha256: string;
}): ReactNode {
  return (
    <>
      <p>
        To install the certificate a phone opens <b>{plainAddress}/authority</b>. Before it is
        trusted, compare the SHA-256 fingerprint there with this one:
      </p>
      <p>
        <code>{sha256.replaceAll(":", " ")}</code>
      </p>
      <p className="note">Good until {endsAt.slice(0, 10)}.</p>
    </>
  );
}

function Act({ word, act }: { word: string; act: () => Promise<void> }): ReactNode {
  return (
    <button type="button" className="act" onClick={() => void act()}>
      {word}
    </button>
  );
}

/** Done only when it is asked for twice. */
function Twice({
  word,
  sure,
  act,
}: {
  word: string;
  sure: string;
  act: () => Promise<void>;
}): ReactNode {
  const [isAsked, setAsked] = useState(false);
  const press = async (): Promise<void> => {
    setAsked(!isAsked);
    if (isAsked) await act();
  };
  return <Act word={isAsked ? sure : word} act={press} />;
}
