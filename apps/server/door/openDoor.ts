import { createServer, type RequestListener, type Server } from "node:http";
import { createServer as createSecureServer, type Server as SecureServer } from "node:https";
import type { AddressInfo } from "node:net";
import { getRequestListener } from "@hono/node-server";
import { hostList } from "./hostList.ts";
import { rawRefusal } from "./rawGate.ts";
import { refuseRaw } from "./refuse.ts";

const HEADER_BYTES = 16_384;
const HEADERS_MS = 20_000;
/** A photograph over a bad radio link takes its time. */
const REQUEST_MS = 300_000;
/** A save that is under way when the bench is closed may end, ms. */
const FINISH_MS = 1500;
/** Two hundred devices with six connections each, and room. */
const MOST_CONNECTIONS = 2000;

export interface ServerKeys {
  readonly certificate: string;
  readonly key: string;
}

export interface DoorPlace {
  readonly address: string;
  /** 0: any that is free. */
  readonly port: number;
  /** Hosts the door answers to, without the port. */
  readonly names: readonly string[];
  /** With it the door speaks TLS. */
  readonly keys?: ServerKeys;
}

/** What answers requests, once the port is known. */
export type DoorApp = (port: number) => {
  fetch(request: Request): Response | Promise<Response>;
};

export interface OpenDoor {
  readonly port: number;
  replaceKeys(keys: ServerKeys): void;
  close(): Promise<void>;
}

/**
 * Listens, and lets in what names this door's hosts exactly.
 *
 * @throws the system's error (EADDRINUSE, EADDRNOTAVAIL, EACCES) when it cannot listen there
 */
export async function openDoor(place: DoorPlace, app: DoorApp): Promise<OpenDoor> {
  const { address, keys } = place;
  const limits = {
    maxHeaderSize: HEADER_BYTES,
    headersTimeout: HEADERS_MS,
    requestTimeout: REQUEST_MS,
  };
  const server: Server | SecureServer =
    keys === undefined
      ? createServer(limits)
      : createSecureServer({ ...limits, ...secureOptions(keys) });
  server.maxConnections = MOST_CONNECTIONS;
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(place.port, address, () => {
      server.off("error", reject);
      resolve();
    });
  });
  const { port } = server.address() as AddressInfo;
  server.on("request", answering(place, port, app));
  // No sockets beyond requests and answers are spoken here.
  server.on("upgrade", (_, socket) => socket.destroy());
  server.on("error", () => {});
  return {
    port,
    replaceKeys: (next) => {
      if ("setSecureContext" in server) server.setSecureContext(secureOptions(next));
    },
    close: () =>
      new Promise((resolve) => {
        const cutOff = setTimeout(() => server.closeAllConnections(), FINISH_MS);
        server.close(() => {
          clearTimeout(cutOff);
          resolve();
        });
        server.closeIdleConnections();
      }),
  };
}

function secureOptions({ certificate, key }: ServerKeys) {
  return { cert: certificate, key, minVersion: "TLSv1.2" as const };
}

function answering({ names, keys }: DoorPlace, port: number, app: DoorApp): RequestListener {
  const hosts = hostList(names, port, keys !== undefined);
  const { fetch } = app(port);
  const listener = getRequestListener((request) => fetch(request), {
    overrideGlobalObjects: false,
  });
  return (request, response) => {
    const code = rawRefusal(request, hosts);
    if (code === null) void listener(request, response);
    else refuseRaw(response, code);
  };
}
