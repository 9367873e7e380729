/** The certificate and key for HTTPS, read and tried before anything is opened. */
import { X509Certificate } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { createSecureContext } from 'node:tls';

export interface Certificate {
  readonly cert: Buffer;
  readonly key: Buffer;
}

/**
 * Reads a certificate and its key.
 * @returns undefined where neither is named
 * @throws Error naming the file and what is wrong with it
 */
export function readCertificate(certFile?: string, keyFile?: string): Certificate | undefined {
  if (certFile === undefined && keyFile === undefined) return undefined;
  if (certFile === undefined) throw new Error('--key is given without --cert; HTTPS needs both');
  if (keyFile === undefined) throw new Error('--cert is given without --key; HTTPS needs both');
  const cert = read(certFile, '--cert');
  const key = read(keyFile, '--key');
  const shown = attempt(() => new X509Certificate(cert), `--cert ${certFile} is no certificate in PEM form`);
  if (Date.parse(shown.validTo) < Date.now())
    throw new Error(`--cert ${certFile} ran out on ${shown.validTo}; renew it`);
  attempt(
    () => createSecureContext({ key }),
    `--key ${keyFile} is no private key in PEM form, or has a passphrase, which is not asked for`,
  );
  attempt(
    () => createSecureContext({ cert, key }),
    `--key ${keyFile} is not the key of the certificate in ${certFile}`,
  );
  return { cert, key };
}

function read(file: string, option: string): Buffer {
  try {
    return readFileSync(file);
  } catch (error) {
    const why = { ENOENT: 'there is no such file', EACCES: 'it may not be read', EISDIR: 'it is a folder' };
    const code = (error as NodeJS.ErrnoException).code as keyof typeof why;
    throw new Error(`${option} ${file}: ${why[code] ?? (error as Error).message}`, { cause: error });
  }
}

function attempt<T>(work: () => T, wrong: string): T {
  try {
    return work();
  } catch (cause) {
    throw new Error(wrong, { cause });
  }
}
