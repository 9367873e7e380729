/** Writing to a store in a test, upon whatever stands there. */
import type { Kept, Kind } from '../../src/household/model.ts';
import type { By, KeptRecord, Written } from '../../src/household/records.ts';
import type { Store } from '../../src/household/store.ts';

const BY: By = { device: 'test', at: '2026-11-28T12:00:00.000Z' };

/** One record as it stands; version 0 where there never was one. */
export async function recordIn(
  store: Store,
  kind: Kind,
  id: string,
): Promise<Pick<KeptRecord, 'version' | 'body'>> {
  for (let after = 0; ; ) {
    const page = await store.records({ after });
    const found = page.records.find((r) => r.kind === kind && r.id === id);
    if (found) return found;
    if (!page.more) break;
    after = page.seq;
  }
  // What is deleted is not among the records: the history has its version.
  const { changes } = await store.history({ kind, id });
  return { version: changes[0]?.version ?? 0, body: null };
}

export async function put<K extends Kind>(store: Store, kind: K, body: Kept<K>): Promise<Written> {
  const { version } = await recordIn(store, kind, body.id);
  return store.write({ kind, id: body.id, body, basedOn: version }, BY);
}

export async function remove(store: Store, kind: Kind, id: string): Promise<Written> {
  const { version } = await recordIn(store, kind, id);
  return store.write({ kind, id, body: null, basedOn: version }, BY);
}

/** The headers by which a write to a path says that it saw the record as it stands. */
export async function precondition(store: Store, path: string): Promise<Record<string, string>> {
  const [, , kind, id] = path.split('/');
  const { version } = await recordIn(store, kind as Kind, id ?? '');
  return version === 0 ? { 'if-none-match': '*' } : { 'if-match': `"${version}"` };
}
