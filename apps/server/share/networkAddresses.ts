import { hostname, networkInterfaces } from "node:os";

/** Bridges and tunnels a program made, not the workshop's network. */
const MADE_BY_PROGRAMS = /^(docker|br-|veth|virbr|vmnet|vboxnet|tun|tap|wg|utun|zt)/i;
const PRIVATE = /^(10\.|192\.168\.|172\.(1[6-9]|2\d|3[01])\.)/;

/** This machine's own addresses on networks (IPv4), the likeliest for the workshop's network first. */
export function networkAddresses(): readonly string[] {
  const found = Object.entries(networkInterfaces()).flatMap(([name, addresses]) =>
    (addresses ?? [])
      .filter(({ family, internal }) => family === "IPv4" && !internal)
      .map(({ address }) => ({
        address,
        order: (MADE_BY_PROGRAMS.test(name) ? 2 : 0) + (PRIVATE.test(address) ? 0 : 1),
      })),
  );
  return found.sort((a, b) => a.order - b.order).map(({ address }) => address);
}

/** Names this machine goes by on a small network; none where its name is no name of that kind. */
export function networkNames(): readonly string[] {
  const [name] = hostname().toLowerCase().split(".");
  if (name === undefined || !/^[a-z0-9]([a-z0-9-]{0,61}[a-z0-9])?$/.test(name)) return [];
  return name === "localhost" ? [] : [`${name}.local`, name];
}
