/** What a running server keeps, read and changed as any client would. */
import type { Household, Kind } from '../../src/household/model.ts';
import type { KeptRecord, RecordsPage } from '../../src/household/records.ts';
import { EMPTY } from '../household/empty-household.ts';

/** Everything that the server at an address keeps, each list in its order. */
export async function householdAt(url: string): Promise<Household> {
  const records: KeptRecord[] = [];
  for (let after = 0, more = true; more; ) {
    const answer = await fetch(`${url}/api/records?after=${after}`);
    if (!answer.ok) throw new Error(`the household is not given: ${await answer.text()}`);
    const page = (await answer.json()) as RecordsPage;
    records.push(...page.records);
    ({ seq: after, more } = page);
  }
  const house: Record<string, unknown[]> = Object.fromEntries(Object.keys(EMPTY).map((kind) => [kind, []]));
  for (const { kind, body } of records.sort((a, b) => a.place - b.place)) if (body) house[kind]?.push(body);
  return house as unknown as Household;
}

/** Keeps an object, new or upon whatever stands there. */
export async function putAt<T extends { readonly id: string }>(
  url: string,
  kind: Kind,
  object: T,
): Promise<void> {
  await write(`${url}/api/${kind}/${encodeURIComponent(object.id)}`, 'PUT', object);
}

export async function deleteAt(url: string, kind: Kind, id: string): Promise<void> {
  await write(`${url}/api/${kind}/${encodeURIComponent(id)}`, 'DELETE');
}

async function write(address: string, method: 'PUT' | 'DELETE', body?: unknown): Promise<void> {
  const send = (headers: Record<string, string>) =>
    fetch(address, {
      method,
      headers: { ...headers, 'content-type': 'application/json' },
      ...(body !== undefined && { body: JSON.stringify(body) }),
    });
  let answer = await send({ 'if-none-match': '*' });
  if (answer.status === 409) {
    const { stands } = (await answer.clone().json()) as { stands?: KeptRecord };
    if (stands) answer = await send({ 'if-match': `"${stands.version}"` });
  }
  if (!answer.ok) throw new Error(`${method} ${address}: ${answer.status} ${await answer.text()}`);
}
