/** Certificate files, and what is said of those that cannot be used. */
import { generateKeyPairSync } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { beforeEach, expect, it, vi } from 'vitest';
import { folderForEachTest } from '../../../test/household/folder-for-each-test.ts';
import { CERT, KEY } from '../../../test/server/self-signed.ts';
import { readCertificate } from './certificate.ts';

const folder = folderForEachTest();
const at = (name: string) => join(folder(), name);
beforeEach(() => {
  const pem = { type: 'pkcs8', format: 'pem' } as const;
  const { privateKey: other } = generateKeyPairSync('ec', { namedCurve: 'P-256' });
  for (const [name, text] of Object.entries({
    'c.pem': CERT,
    'k.pem': KEY,
    'other.pem': other.export(pem) as string,
    'locked.pem': other.export({ ...pem, cipher: 'aes-256-cbc', passphrase: 'x' }) as string,
    'no.pem': 'not PEM',
    'empty.pem': '',
  }))
    writeFileSync(at(name), text);
  mkdirSync(at('folder'));
});

it('are read where both are good; none is no HTTPS', () => {
  expect(readCertificate(at('c.pem'), at('k.pem'))).toEqual({
    cert: Buffer.from(CERT),
    key: Buffer.from(KEY),
  });
  expect(readCertificate()).toBeUndefined();
});

it.each([
  ['c.pem', undefined, /^--cert is given without --key/],
  [undefined, 'k.pem', /^--key is given without --cert/],
  ['none.pem', 'k.pem', /^--cert .*none\.pem: there is no such file$/],
  ['c.pem', 'none.pem', /^--key .*none\.pem: there is no such file$/],
  ['folder', 'k.pem', /^--cert .*folder: it is a folder$/],
  ['no.pem', 'k.pem', /^--cert .*no\.pem is no certificate/],
  ['empty.pem', 'k.pem', /^--cert .*empty\.pem is no certificate/],
  ['k.pem', 'k.pem', /^--cert .*k\.pem is no certificate/],
  ['c.pem', 'no.pem', /^--key .*no\.pem is no private key/],
  ['c.pem', 'empty.pem', /^--key .*empty\.pem is no private key/],
  ['c.pem', 'c.pem', /^--key .*c\.pem is no private key/],
  ['c.pem', 'locked.pem', /^--key .*locked\.pem is no private key .*passphrase/],
  ['c.pem', 'other.pem', /^--key .*other\.pem is not the key of the certificate in .*c\.pem$/],
])('%s and %s', (cert, key, words) => {
  expect(() => readCertificate(cert && at(cert), key && at(key))).toThrow(words);
});

it('says when a certificate has run out', () => {
  vi.useFakeTimers({ now: Date.UTC(2200, 0, 1) });
  expect(() => readCertificate(at('c.pem'), at('k.pem'))).toThrow(/c\.pem ran out on .* 2126/);
  vi.useRealTimers();
});
