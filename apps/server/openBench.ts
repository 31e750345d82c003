import { chmodSync, existsSync, mkdirSync, readdirSync } from "node:fs";
import { join } from "node:path";
import type { Hono } from "hono";
import { benchApi } from "./api/index.ts";
import { benchDoor, type DoorParts } from "./door/benchDoor.ts";
import type { DoorEnv, DoorKind } from "./door/doorKind.ts";
import { OWN_NAMES } from "./door/hostList.ts";
import { type DoorPlace, type OpenDoor, openDoor } from "./door/openDoor.ts";
import { type OwnSessions, ownSessions } from "./door/ownSessions.ts";
import { REFUSALS } from "./door/sentences.ts";
import { webFiles } from "./door/webFiles.ts";
import { type Devices, devices } from "./share/devices.ts";
import { networkAddresses, networkNames } from "./share/networkAddresses.ts";
import { ownCertificates } from "./share/ownCertificates.ts";
import { pairing } from "./share/pairing.ts";
import { privateFiles } from "./share/privateFiles.ts";
import { openRoutes, shareRoutes } from "./share/shareRoutes.ts";
import { sharing } from "./share/sharing.ts";
import { openStorage, type Storage } from "./storage/index.ts";

const ONLY_OWNER = 0o700;
const DATABASE = "bench.sqlite";
/** How often certificates and the network's address are seen to, ms. */
const TEND_MS = 60_000;

export interface BenchOptions {
  /** Where the work is kept, and always the door's own records. */
  readonly folder: string;
  /** In its place for the work: a PostgreSQL database. */
  readonly postgresUrl?: string;
  /** Of this machine's own door; sharing takes the two after it. 0: any that are free. */
  readonly port: number;
  /** The built web app. */
  readonly webFolder: string;
  readonly owner: { readonly who: string; readonly device: string };
  say(line: string): void;
  readonly clock?: () => Date;
  /** Addresses of this machine on networks; for tests, which have none but loopback. */
  readonly addresses?: () => readonly string[];
  readonly names?: () => readonly string[];
  /** Ports of the doors on the network, where not the two after this machine's own. */
  readonly sharedPorts?: { readonly plain: number; readonly secure: number };
}

export interface OpenBench {
  readonly port: number;
  /** The address with the token of this start. */
  readonly address: string;
  /** An address that works once, for a minute: for a browser program's arguments. */
  launchAddress(): string;
  /** Where the work is, in words. */
  readonly where: string;
  /** Where other devices find it; null while it is not shared. */
  sharedAddress(): string | null;
  /** Sees to certificates and the network's address; done every minute by itself. */
  tend(): Promise<void>;
  close(): Promise<void>;
}

/**
 * Opens the storage and the doors.
 *
 * @throws StorageTrouble when the storage cannot be used; the system's error when the port cannot be had
 */
export async function openBench(options: BenchOptions): Promise<OpenBench> {
  const { folder, postgresUrl, clock = () => new Date() } = options;
  makeOwn(folder);
  const storage = await openStorage(postgresUrl === undefined ? { folder } : { postgresUrl });
  try {
    return await openDoors(options, storage, clock);
  } catch (error) {
    await storage.close();
    throw error;
  }
}

/** The folder is its owner's alone, where it is the bench's: new, empty, or holding its database. Another folder's rights are left as they are. */
function makeOwn(folder: string): void {
  mkdirSync(folder, { recursive: true, mode: ONLY_OWNER });
  const isBenchs = readdirSync(folder).length === 0 || existsSync(join(folder, DATABASE));
  if (isBenchs) chmodSync(folder, ONLY_OWNER);
}

async function openDoors(
  options: BenchOptions,
  storage: Storage,
  clock: () => Date,
): Promise<OpenBench> {
  const { say } = options;
  const files = privateFiles(join(options.folder, "door"));
  const sessions = ownSessions(clock);
  const certificates = ownCertificates(files, clock);
  const known = devices(files, clock, [options.owner.who, options.owner.device]);
  const shared = sharing({
    files,
    certificates,
    clock,
    ports: options.sharedPorts ?? portsAfter(options.port),
    addresses: options.addresses ?? networkAddresses,
    names: options.names ?? networkNames,
    openDoor: (kind, place) => open(kind, place),
  });
  const share = { sharing: shared, devices: known, pairing: pairing(clock), certificates };
  const parts: DoorParts = {
    sessions,
    owner: options.owner,
    paired: (secret, kind) => pairedVisitor(known, secret, kind),
    open: (kind, port) => openRoutes(share, kind, port),
    behind: [shareRoutes(share), benchApi(storage, clock) as unknown as Hono<DoorEnv>],
    files: webFiles(options.webFolder),
    say,
  };
  const open = (kind: DoorKind, place: DoorPlace): Promise<OpenDoor> =>
    openDoor(place, (port) => benchDoor(parts, kind, port));
  const own = await openOwn(open, options.port);
  const code = await shared.begin();
  if (code !== null) say(`Not shared on the network. ${REFUSALS[code].message}`);
  const tending = setInterval(() => void tend(), TEND_MS).unref();
  const tend = () => shared.tend().catch((error) => say(`Sharing: ${String(error)}`));
  return {
    ...addressesOf(own[0]!.port, sessions),
    where: storage.where,
    sharedAddress: () => shared.state().address,
    tend: shared.tend,
    close: async () => {
      clearInterval(tending);
      await shared.close();
      await Promise.all(own.map((door) => door.close()));
      await storage.close();
    },
  };
}

function portsAfter(port: number): { readonly plain: number; readonly secure: number } {
  return port === 0 ? { plain: 0, secure: 0 } : { plain: port + 1, secure: port + 2 };
}

/** Both kinds of loopback address where the machine has both, at the same port. */
async function openOwn(
  open: (kind: DoorKind, place: DoorPlace) => Promise<OpenDoor>,
  port: number,
): Promise<readonly OpenDoor[]> {
  const first = await open("own", { address: "127.0.0.1", port, names: OWN_NAMES });
  const place = { address: "::1", port: first.port, names: OWN_NAMES };
  // Without the newer kind of address, or where another program has it, the first is enough.
  const second = await open("own", place).catch(() => null);
  return second === null ? [first] : [first, second];
}

function addressesOf(port: number, sessions: OwnSessions) {
  const page = `http://127.0.0.1:${port}/`;
  return {
    port,
    address: `${page}#token=${sessions.token}`,
    launchAddress: () => `${page}#token=${sessions.launchToken()}`,
  };
}

function pairedVisitor(known: Devices, secret: string, kind: DoorKind) {
  const device = known.find(secret, kind === "secure");
  return device === null ? null : { who: device.name, device: device.name, role: device.role };
}
