/** Every kind of question that a page asks of the server, asked one at a time. */
import type { Household } from '../../src/household/model.ts';
import { piecesAfter, type RecordsPage } from '../../src/household/records.ts';

/** @returns ms of each round by route */
export async function routes(url: string, house: Household, rounds: number): Promise<Map<string, number[]>> {
  const times = new Map<string, number[]>();
  async function ask(name: string, path: string, init?: RequestInit): Promise<unknown> {
    const start = performance.now();
    const answer = await fetch(url + path, init);
    const body = await answer.text();
    const ms = performance.now() - start;
    if (!answer.ok) throw new Error(`${name}: ${answer.status} ${body.slice(0, 200)}`);
    times.set(name, [...(times.get(name) ?? []), ms]);
    return body.startsWith('{') ? JSON.parse(body) : undefined;
  }
  const send = (method: string, body: unknown, version?: number): RequestInit => ({
    method,
    headers: {
      'content-type': 'application/json',
      ...(version === 0 && { 'if-none-match': '*' }),
      ...(version !== undefined && version > 0 && { 'if-match': `"${version}"` }),
    },
    body: JSON.stringify(body),
  });
  const last = house.batches.at(-1);
  const lot = house.lots.at(-1);
  const [mix] = house.mixes;
  if (!last || !lot || !mix) throw new Error('a household without batches, lots or mixes');
  const { finishedAt: _end, left: _left, ...plan } = last;
  let [lotVersion, mixVersion] = [1, 1];
  for (let k = 0; k < rounds; k++) {
    await ask('GET / (the page)', '/');
    const records = async (name: string, query: string) =>
      (await ask(`GET /api/records, ${name}`, `/api/records?brief=1&${query}`)) as RecordsPage;
    const first = await records('the first part', 'after=0');
    // All of it, as a page asks for it, in the first round just after the server started.
    if (k < 2)
      for (const { after, upTo, of } of piecesAfter(first))
        await records(
          k === 0 ? 'each part, after a start' : 'each part, asked for again',
          `after=${after}&upTo=${upTo}&of=${of}`,
        );
    // Not before: what is written first has all records looked through.
    if (k === 0)
      await fetch(`${url}/api/batches/routes`, send('PUT', { ...plan, id: 'routes', pours: [] }, 0));
    await ask('GET /api/records, nothing new', '/api/records?after=1000000000');
    await ask('GET /api/history', '/api/history');
    const at = new Date(Date.UTC(2026, 2, 11, 9) + 1000 * k).toISOString();
    const pour = { food: mix.problem.foods[0]?.id, lots: [], target: 1, grams: 1, at };
    await ask('POST a pour', '/api/batches/routes/pours', send('POST', { pours: [pour] }));
    await ask('PUT a pack', `/api/lots/${lot.id}`, send('PUT', { ...lot, grams: 300 + k }, lotVersion++));
    const named = { ...mix, name: `${mix.name} ${k}` };
    await ask('PUT a mix', `/api/mixes/${mix.id}`, send('PUT', named, mixVersion++));
  }
  return times;
}
