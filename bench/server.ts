/** The server and the store of a household of ten years: every route, reads and writes a second, many clients at once. */
import { openServer } from '../test/browser/harness.ts';
import { tenYears } from '../test/household/ten-years.ts';
import { figureOf } from './lib/figures.ts';
import type { Cell, Limit, Options, Report, Table } from './lib/report.ts';
import { rounded } from './lib/say.ts';
import { clients } from './server/clients.ts';
import { routes } from './server/routes.ts';
import { storeTable } from './server/store.ts';
import { throughput } from './server/throughput.ts';

const P95_MS = 20;

export async function run({ quick }: Options): Promise<Report> {
  const house = tenYears();
  const server = await openServer(house);
  try {
    const asked = await routes(server.url, house, quick ? 20 : 60);
    const rates = await throughput(server.url, house, quick ? 1 : 5);
    const together = await clients(
      server.url,
      house,
      quick ? { clients: 20, seconds: 3 } : { clients: 200, seconds: 20 },
    );
    return {
      about: [
        'The server and who asks it share the cores of one machine; every write is on disk before it is answered.',
      ],
      tables: [routesTable(asked), rates, ...together, await storeTable(quick)],
      limits: [limit(asked)],
    };
  } finally {
    await server.close();
  }
}

type Asked = ReadonlyMap<string, readonly number[]>;

function routesTable(asked: Asked): Table {
  return {
    title: 'Routes, one question at a time',
    of: 'route',
    columns: ['time', '95th percentile', 'rounds'],
    rows: [...asked].map(([name, times]): [string, ...Cell[]] => {
      const figure = figureOf(times, 'ms');
      return [name, figure, `${rounded(figure.high)} ms`, figure.runs];
    }),
  };
}

function limit(asked: Asked): Limit {
  const all = [...asked].map(([name, times]) => ({ name, high: figureOf(times, 'ms').high }));
  const over = all.filter((r) => r.high >= P95_MS).sort((a, b) => b.high - a.high);
  const slowest = all.reduce((a, b) => (a.high > b.high ? a : b));
  const named = (of: typeof all) => of.map((r) => `${r.name} ${rounded(r.high)} ms`).join(', ');
  return {
    asked: `ten-year household: the server answers in under ${P95_MS} ms at the 95th percentile`,
    measured: over.length === 0 ? `the slowest: ${named([slowest])}` : `over it: ${named(over)}`,
    met: over.length === 0,
  };
}
