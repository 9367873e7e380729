/** A file sent to the server: looked at first, then written just as it was shown. Every failure is an ApiError. */
import type { ImportCheck, ImportMode, PartCheck } from '../../household/exchange/wire.ts';
import { ask, strangeAnswer } from '../store/ask.ts';

/** How long a large household may take to be looked through and written, ms. */
const FOR_A_FILE = 120_000;

async function send<T>(
  path: string,
  query: Readonly<Record<string, string | readonly string[]>>,
  text: string,
): Promise<T> {
  const asked = new URLSearchParams();
  for (const [key, value] of Object.entries(query))
    for (const each of typeof value === 'string' ? [value] : value) asked.append(key, each);
  const answer = (await ask(
    `${path}?${asked}`,
    { method: 'POST', headers: { 'content-type': 'text/plain' }, body: text },
    FOR_A_FILE,
  )) as object;
  if (!('token' in answer)) throw await strangeAnswer();
  return answer as T;
}

export const lookAt = (text: string, mode: ImportMode) =>
  send<ImportCheck>('/api/import/check', { mode }, text);

export const bringIn = (text: string, mode: ImportMode, token: string) =>
  send<ImportCheck>('/api/import', { mode, token }, text);

export const lookAtPart = (text: string) => send<PartCheck>('/api/import/part/check', {}, text);

/** @param accept ids of the choices of the sender that are taken over */
export const bringInPart = (text: string, accept: readonly string[], token: string) =>
  send<PartCheck>('/api/import/part', { accept, token }, text);
