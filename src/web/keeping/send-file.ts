/** A file sent to the server: looked at first, then written just as it was shown. */
import type { ImportCheck, ImportMode, PartCheck } from '../../household/exchange/wire.ts';

/** Why a file is not taken in, by field. */
export class FileRefused extends Error {
  readonly faults: readonly { readonly field: string; readonly message: string }[];
  constructor(message: string, faults: FileRefused['faults'] = []) {
    super(message);
    this.name = 'FileRefused';
    this.faults = faults;
  }
}

/** @throws FileRefused */
async function send<T>(
  path: string,
  query: Readonly<Record<string, string | readonly string[]>>,
  text: string,
): Promise<T> {
  const asked = new URLSearchParams();
  for (const [key, value] of Object.entries(query))
    for (const each of typeof value === 'string' ? [value] : value) asked.append(key, each);
  let answer: Response;
  try {
    answer = await fetch(`${path}?${asked}`, {
      method: 'POST',
      headers: { 'content-type': 'text/plain' },
      body: text,
    });
  } catch {
    throw new FileRefused(
      'The Pouchful server does not answer, so nothing was written. Is it still running?',
    );
  }
  const body: unknown = await answer.json().catch(() => undefined);
  if (answer.ok && typeof body === 'object' && body !== null && 'token' in body) return body as T;
  const told = (body ?? {}) as { field?: string; message?: string; faults?: FileRefused['faults'] };
  if (typeof told.message !== 'string')
    throw new FileRefused(`The server answered ${answer.status}; nothing was written.`);
  throw new FileRefused(told.message, told.faults ?? [{ field: told.field ?? '', message: told.message }]);
}

export const lookAt = (text: string, mode: ImportMode) =>
  send<ImportCheck>('/api/import/check', { mode }, text);

export const bringIn = (text: string, mode: ImportMode, token: string) =>
  send<ImportCheck>('/api/import', { mode, token }, text);

export const lookAtPart = (text: string) => send<PartCheck>('/api/import/part/check', {}, text);

/** @param accept ids of the choices of the sender that are taken over */
export const bringInPart = (text: string, accept: readonly string[], token: string) =>
  send<PartCheck>('/api/import/part', { accept, token }, text);
