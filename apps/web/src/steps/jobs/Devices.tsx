import { type ReactNode, useEffect, useState } from "react";
import { server } from "../../server/serverApi.ts";
import { say } from "../../store/benchStore.ts";
import { Authority, type Sharing } from "./Authority.tsx";

interface Device {
  readonly id: string;
  readonly name: string;
  readonly role: string;
  readonly pairedAt?: string;
  readonly isRevoked?: boolean;
}

/** Other devices on the workshop's network: off until asked for, each paired by a code that lives two minutes, each can be sent away. */
export function Devices(): ReactNode {
  const [sharing, setSharing] = useState<Sharing | null>(null);
  const [devices, setDevices] = useState<readonly Device[]>([]);
  const [code, setCode] = useState<{ code: string; expiresAt: string } | null>(null);
  const refresh = async (): Promise<void> => {
    const answer = await server<Sharing>("GET", "/sharing");
    if (answer.kind === "ok") setSharing(answer.value);
    const listed = await server<readonly Device[] | { devices: readonly Device[] }>(
      "GET",
      "/devices",
    );
    if (listed.kind === "ok")
      setDevices("devices" in listed.value ? listed.value.devices : listed.value);
  };
  useEffect(() => {
    void refresh();
  }, []);
  if (sharing === null) return null;
  const turn = async (change: object): Promise<void> => {
    const answer = await server("POST", "/sharing", change);
    if (answer.kind === "refused") say(answer.refusal.message);
    await refresh();
  };
  return (
    <>
      <h2>Other devices</h2>
      <p>
        {sharing.isOn
          ? `Devices on this network reach the bench at ${sharing.address ?? "this machine"}.`
          : "Only this machine can open the bench."}
      </p>
      <div className="care-row">
        <button type="button" className="act" onClick={() => void turn({ isOn: !sharing.isOn })}>
          {sharing.isOn ? "stop sharing" : "share on the workshop's network"}
        </button>
        {sharing.isOn && <PairVerbs onCode={setCode} />}
      </div>
      {sharing.isOn && <Authority sharing={sharing} refresh={refresh} />}
      {code !== null && <PairCode code={code.code} expiresAt={code.expiresAt} />}
      <DeviceList devices={devices} refresh={refresh} />
    </>
  );
}

function PairVerbs({
  onCode,
}: {
  onCode: (code: { code: string; expiresAt: string }) => void;
}): ReactNode {
  const ask = async (role: "edit" | "view"): Promise<void> => {
    const answer = await server<{ code: string; expiresAt: string }>("POST", "/sharing/codes", {
      role,
    });
    if (answer.kind === "ok") onCode(answer.value);
    if (answer.kind === "refused") say(answer.refusal.message);
  };
  return (
    <>
      <button type="button" className="act" onClick={() => void ask("edit")}>
        pair a device that may edit
      </button>
      <button type="button" className="act" onClick={() => void ask("view")}>
        pair a device that may look and hunt
      </button>
    </>
  );
}

function PairCode({ code, expiresAt }: { code: string; expiresAt: string }): ReactNode {
  return (
    <div role="status">
      <p>On the other device open the address above and type</p>
      <p className="pair-code">{code}</p>
      <p className="note">
        Good once, until {new Date(expiresAt).toLocaleTimeString([], { timeStyle: "short" })}, for
        five tries.
      </p>
    </div>
  );
}

function DeviceList({
  devices,
  refresh,
}: {
  devices: readonly Device[];
  refresh: () => Promise<void>;
}): ReactNode {
  const [asked, setAsked] = useState<string | null>(null);
  const revoke = async (id: string): Promise<void> => {
    const answer = await server("POST", `/devices/${id}/revoke`, {});
    if (answer.kind === "refused") say(answer.refusal.message);
    setAsked(null);
    await refresh();
  };
  return (
    <ul>
      {devices
        .filter(({ isRevoked }) => isRevoked !== true)
        .map(({ id, name, role }) => (
          <li key={id} className="care-row">
            <b>{name}</b> <span className="note">may {role}</span>
            <button
              type="button"
              className="act small"
              onClick={() => (asked === id ? void revoke(id) : setAsked(id))}
            >
              {asked === id ? `yes, send ${name} away` : "send away"}
            </button>
          </li>
        ))}
    </ul>
  );
}
