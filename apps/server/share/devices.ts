import { randomBytes } from "node:crypto";
import * as z from "zod";
import { newSecret, sealOf } from "../door/secretSeal.ts";
import type { PrivateFiles } from "./privateFiles.ts";

const FILE = "devices";
const ID_BYTES = 8;
/** A shop with 200 devices and room to spare. */
const MOST_DEVICES = 500;

const deviceSchema = z.object({
  id: z.string(),
  name: z.string(),
  role: z.enum(["edit", "view"]),
  /** SHA-256 of what the device's cookie holds. */
  seal: z.string(),
  /** Paired at the secure door, so that its cookie never went over the network in the clear. */
  isSecure: z.boolean(),
  pairedAt: z.string(),
});

export type Device = z.infer<typeof deviceSchema>;

/** What the owner sees of a device. */
export interface DeviceLine extends Omit<Device, "seal"> {
  /** Since the bench was opened; null where it has not come by. */
  readonly lastSeenAt: string | null;
}

export type DeviceAdded =
  | { readonly ok: true; readonly secret: string }
  | { readonly ok: false; readonly code: "too-many-devices" };

/** Devices that were paired and not sent away. */
export interface Devices {
  list(): readonly DeviceLine[];
  isTaken(name: string): boolean;
  add(device: Pick<Device, "name" | "role" | "isSecure">): DeviceAdded;
  /** Whose cookie it is, at the door it was given at; null for anything else. */
  find(secret: string, isSecure: boolean): Device | null;
  /** False where there is no such device. */
  revoke(id: string): boolean;
}

/** @param takenNames names no device may have, since they stand for somebody else */
export function devices(
  files: PrivateFiles,
  clock: () => Date,
  takenNames: readonly string[],
): Devices {
  let paired: readonly Device[] = z.array(deviceSchema).parse(files.read(FILE) ?? []);
  const seenAt = new Map<string, string>();
  const keep = (next: readonly Device[]): void => {
    files.write(FILE, next);
    paired = next;
  };
  const isTaken = (name: string): boolean =>
    [...takenNames, ...paired.map((device) => device.name)].some(
      (taken) => taken.toLowerCase() === name.toLowerCase(),
    );
  return {
    isTaken,
    list: () =>
      paired.map(({ seal, ...line }) => ({ ...line, lastSeenAt: seenAt.get(line.id) ?? null })),
    add: (device) => {
      if (paired.length >= MOST_DEVICES) return { ok: false, code: "too-many-devices" };
      const secret = newSecret();
      const id = randomBytes(ID_BYTES).toString("hex");
      keep([...paired, { ...device, id, seal: sealOf(secret), pairedAt: clock().toISOString() }]);
      return { ok: true, secret };
    },
    find: (secret, isSecure) => {
      const seal = sealOf(secret);
      const found = paired.find((device) => device.seal === seal && device.isSecure === isSecure);
      if (found !== undefined) seenAt.set(found.id, clock().toISOString());
      return found ?? null;
    },
    revoke: (id) => {
      if (!paired.some((device) => device.id === id)) return false;
      keep(paired.filter((device) => device.id !== id));
      return true;
    },
  };
}
