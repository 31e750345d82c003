import * as z from "zod";
import type { DoorKind } from "../door/doorKind.ts";
import type { DoorPlace, OpenDoor } from "../door/openDoor.ts";
import type { RefusalCode } from "../door/sentences.ts";
import type { CertifiedNames, KeyedCertificate } from "./authority.ts";
import type { AuthorityLine, OwnCertificates } from "./ownCertificates.ts";
import type { PrivateFiles } from "./privateFiles.ts";
import { shopCertificate } from "./shopCertificate.ts";

const FILE = "sharing";

export const settingSchema = z.strictObject({
  isOn: z.boolean(),
  tls: z.enum(["none", "own-authority", "shop"]),
  /** Of several networks, the one chosen; absent: the likeliest. */
  address: z.string().max(45).optional(),
});

export type SharingSetting = z.infer<typeof settingSchema>;

/** What the owner sees of sharing. */
export interface SharingState {
  readonly isOn: boolean;
  readonly tls: SharingSetting["tls"];
  /** What another device opens; null while nothing is shared. */
  readonly address: string | null;
  readonly port: number | null;
  /** The plain door: for the certificate, and for devices that only look and tick. */
  readonly plainAddress: string | null;
  readonly secureAddress: string | null;
  readonly addresses: readonly string[];
  readonly authority: AuthorityLine | null;
}

export interface Sharing {
  state(): SharingState;
  /** @returns why it was not done; sharing is then as it was before */
  change(change: Partial<SharingSetting>): Promise<RefusalCode | null>;
  makeAuthority(): Promise<RefusalCode | null>;
  removeAuthority(): Promise<void>;
  /** Sees to what time brings: certificates that run out, a network with another address. */
  tend(): Promise<void>;
  /** Opens what was shared when the bench was closed. */
  begin(): Promise<RefusalCode | null>;
  close(): Promise<void>;
}

export interface SharingParts {
  readonly files: PrivateFiles;
  readonly certificates: OwnCertificates;
  readonly clock: () => Date;
  readonly ports: { readonly plain: number; readonly secure: number };
  addresses(): readonly string[];
  names(): readonly string[];
  openDoor(kind: DoorKind, place: DoorPlace): Promise<OpenDoor>;
}

interface OpenDoors {
  readonly address: string;
  readonly plain: OpenDoor;
  readonly secure: {
    readonly door: OpenDoor;
    readonly host: string;
    keys: KeyedCertificate;
  } | null;
}

/** The doors on the workshop's network: none until the owner asks. What was asked for is kept for the next start. */
export function sharing(parts: SharingParts): Sharing {
  const { files, certificates } = parts;
  let setting = settingSchema.parse(files.read(FILE) ?? { isOn: false, tls: "none" });
  let doors: OpenDoors | null = null;
  const inTurn = oneByOne();

  const shut = async (): Promise<void> => {
    const open = doors;
    doors = null;
    await open?.plain.close();
    await open?.secure?.door.close();
  };
  const openAs = async (next: SharingSetting): Promise<RefusalCode | null> => {
    await shut();
    const opened = await openDoors(parts, next);
    if (typeof opened === "string") return opened;
    doors = opened;
    return null;
  };
  const change = async (asked: Partial<SharingSetting>): Promise<RefusalCode | null> => {
    const next = { ...setting, ...asked };
    const code = next.isOn ? await openAs(next) : await shut().then(() => null);
    if (code !== null) {
      if (setting.isOn) await openAs(setting);
      return code;
    }
    files.write(FILE, next);
    setting = next;
    return null;
  };
  return {
    state: () => stateOf(parts, setting, doors),
    change: (asked) => inTurn(() => change(asked)),
    makeAuthority: () =>
      inTurn(async () => {
        const addresses = parts.addresses();
        await certificates.make({ addresses, names: parts.names() });
        return change({ tls: "own-authority" });
      }),
    removeAuthority: () =>
      inTurn(async () => {
        if (setting.tls === "own-authority") await change({ tls: "none" });
        certificates.remove();
      }),
    tend: () =>
      inTurn(async () => {
        if (!setting.isOn) return;
        if (doors === null || !parts.addresses().includes(doors.address)) {
          await openAs(setting);
          return;
        }
        const keys = await keysFor(parts, setting, doors.address);
        if (doors.secure === null || keys === null || typeof keys === "string") return;
        if (keys.keyed.certificate !== doors.secure.keys.certificate) {
          doors.secure.keys = keys.keyed;
          doors.secure.door.replaceKeys(keys.keyed);
        }
      }),
    begin: () => inTurn(async () => (setting.isOn ? openAs(setting) : null)),
    close: () => inTurn(shut),
  };
}

function oneByOne(): <T>(action: () => Promise<T>) => Promise<T> {
  let last: Promise<unknown> = Promise.resolve();
  return (action) => {
    const done = last.then(action, action);
    last = done.catch(() => {});
    return done;
  };
}

type Keys = { readonly keyed: KeyedCertificate; readonly names: CertifiedNames };

/** The certificate of the secure door; null where the setting has none. */
async function keysFor(
  { files, certificates, clock, names }: SharingParts,
  { tls }: SharingSetting,
  address: string,
): Promise<Keys | RefusalCode | null> {
  if (tls === "none") return null;
  if (tls === "shop") {
    const shop = shopCertificate(files.folder, clock());
    return shop.ok ? shop : shop.code;
  }
  const wanted = { addresses: [address], names: names() };
  const keyed = await certificates.leaf(wanted);
  return keyed === null ? "no-authority" : { keyed, names: wanted };
}

async function openDoors(
  parts: SharingParts,
  setting: SharingSetting,
): Promise<OpenDoors | RefusalCode> {
  const addresses = parts.addresses();
  const address = setting.address ?? addresses[0];
  if (address === undefined) return "no-network";
  if (!addresses.includes(address)) return "wrong-address";
  const keys = await keysFor(parts, setting, address);
  if (typeof keys === "string") return keys;
  const names = [address, ...parts.names()];
  let plain: OpenDoor | null = null;
  try {
    plain = await parts.openDoor("plain", { address, port: parts.ports.plain, names });
    if (keys === null) return { address, plain, secure: null };
    const hosts = [...new Set([...keys.names.names, ...keys.names.addresses])];
    const door = await parts.openDoor("secure", {
      address,
      port: parts.ports.secure,
      names: hosts,
      keys: keys.keyed,
    });
    const host = hosts.includes(address) ? address : hosts[0]!;
    return { address, plain, secure: { door, host, keys: keys.keyed } };
  } catch (error) {
    await plain?.close();
    const { code } = error as { code?: string };
    if (code === "EADDRINUSE" || code === "EACCES") return "port-taken";
    if (code === "EADDRNOTAVAIL") return "no-network";
    throw error;
  }
}

function stateOf(
  { addresses, certificates }: SharingParts,
  { tls }: SharingSetting,
  doors: OpenDoors | null,
): SharingState {
  const plainAddress = doors === null ? null : `http://${doors.address}:${doors.plain.port}`;
  const secure = doors?.secure ?? null;
  const secureAddress = secure === null ? null : `https://${secure.host}:${secure.door.port}`;
  return {
    isOn: doors !== null,
    tls,
    address: secureAddress ?? plainAddress,
    port: secure?.door.port ?? doors?.plain.port ?? null,
    plainAddress,
    secureAddress,
    addresses: addresses(),
    authority: certificates.line(),
  };
}
