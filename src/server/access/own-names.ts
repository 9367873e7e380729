/** The names and addresses by which this server may be called. Any other is foreign (DNS rebinding). */
import { hostname, networkInterfaces } from 'node:os';

/** How long the addresses of this machine are taken to be what they were, ms: a network may be joined at any time. */
const FRESH = 5000;

/**
 * Tells whether a host name is this server's own.
 * @param lan whether other machines of the network are served too, by any address of this one and by its name
 * @param more further names
 * @returns asked with a name in small letters, without a port; IPv6 in brackets
 */
export function ownNames(lan: boolean, more: readonly string[] = []): (name: string) => boolean {
  const steady = new Set(['localhost', '127.0.0.1', '[::1]', ...more.map((name) => name.toLowerCase())]);
  if (!lan) return (name) => steady.has(name);
  const machine = hostname().toLowerCase();
  for (const name of [machine, `${machine}.local`]) steady.add(name);
  let addresses = new Set<string>();
  let readAt = Number.NEGATIVE_INFINITY;
  return (name) => {
    if (steady.has(name)) return true;
    if (!/^[\d.]+$|^\[/.test(name)) return false;
    const now = performance.now();
    if (now - readAt > FRESH) {
      readAt = now;
      addresses = new Set(ownAddresses().map(({ host }) => host));
    }
    return addresses.has(name);
  };
}

/** Addresses by which other devices of the network find this machine: IPv4 where it has any, easier to type. */
export function networkAddresses(): string[] {
  const all = ownAddresses()
    .filter(({ internal, linkLocal }) => !internal && !linkLocal)
    .map(({ host }) => host);
  const short = all.filter((host) => !host.startsWith('['));
  return short.length > 0 ? short : all;
}

function ownAddresses(): { host: string; internal: boolean; linkLocal: boolean }[] {
  const all = Object.values(networkInterfaces()).flatMap((one) => one ?? []);
  const of = (wanted: string) => all.filter(({ family }) => family === wanted);
  return [...of('IPv4'), ...of('IPv6')].map(({ family, address, internal }) => ({
    host: family === 'IPv6' ? `[${address.toLowerCase()}]` : address,
    internal,
    linkLocal: family === 'IPv6' && address.toLowerCase().startsWith('fe80:'),
  }));
}
