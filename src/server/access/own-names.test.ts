/** By which names and addresses this server may be called. */
import { hostname, networkInterfaces } from 'node:os';
import { expect, it } from 'vitest';
import { networkAddresses, ownNames } from './own-names.ts';

const LOCAL = ['localhost', '127.0.0.1', '[::1]'];
const FOREIGN = ['evil.example', '8.8.8.8', '[2001:4860:4860::8888]', '0.0.0.0', '[::]', '1', ''];
const machine = hostname().toLowerCase();
const external = Object.values(networkInterfaces())
  .flatMap((all) => all ?? [])
  .filter((one) => !one.internal)
  .map(({ family, address }) => (family === 'IPv6' ? `[${address}]` : address));

it('alone: as this machine calls itself, and by names that were given', () => {
  const isOwn = ownNames(false, ['Shelter.lan']);
  for (const name of [...LOCAL, 'shelter.lan']) expect(isOwn(name), name).toBe(true);
  for (const name of [...FOREIGN, ...external, `${machine}.local`]) expect(isOwn(name), name).toBe(false);
});

it('for the network: also by every address of the machine, and its name', () => {
  const isOwn = ownNames(true, ['shelter.lan']);
  for (const name of [...LOCAL, ...external, machine, `${machine}.local`, 'shelter.lan'])
    expect(isOwn(name), name).toBe(true);
  for (const name of [...FOREIGN, `${machine}.evil.example`]) expect(isOwn(name), name).toBe(false);
});

it('other devices are told addresses at which they can find it', () => {
  for (const address of networkAddresses()) {
    expect(external).toContain(address);
    expect(address).not.toMatch(/^\[fe80/);
  }
});
