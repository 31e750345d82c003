import { type ReactNode, useState } from "react";
import { server } from "../server/serverApi.ts";

/** A device that is not known yet types the code shown at the workshop's machine. */
export function PairPage({ why }: { why: string }): ReactNode {
  const [code, setCode] = useState("");
  const [deviceName, setName] = useState("");
  const [said, setSaid] = useState<string | null>(null);
  const pair = async (): Promise<void> => {
    const answer = await server("POST", "/pair", {
      code: code.trim(),
      deviceName: deviceName.trim(),
    });
    if (answer.kind === "ok") location.replace("/");
    else setSaid(answer.kind === "away" ? "The bench cannot be reached." : answer.refusal.message);
  };
  return (
    <main className="locked">
      <h1>Copperwright</h1>
      <p>{why}</p>
      <p className="note">
        On the workshop's own machine open the address that <code>copperwright open</code> printed;
        it carries the key. On another device, have a code shown there (Jobs, Other devices) and
        type it here.
      </p>
      <form
        className="entry"
        onSubmit={(event) => {
          event.preventDefault();
          void pair();
        }}
      >
        <label className="entry">
          <span className="note">code</span>
          <input
            className="field"
            value={code}
            autoComplete="off"
            onChange={(event) => setCode(event.target.value)}
          />
        </label>
        <label className="entry">
          <span className="note">what to call this device</span>
          <input
            className="field"
            value={deviceName}
            maxLength={40}
            onChange={(event) => setName(event.target.value)}
          />
        </label>
        <button
          type="submit"
          className="act filled"
          disabled={code.trim() === "" || deviceName.trim() === ""}
        >
          pair this device
        </button>
      </form>
      <p role="alert">{said}</p>
    </main>
  );
}
