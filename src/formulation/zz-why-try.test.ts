import { test } from 'vitest';
import { demoProblem } from '../household/demo.ts';
import { loadReference } from '../household/reference-file.ts';
import { Formulation } from './formulation.ts';
import { loadHighs } from './highs.ts';
import { parseProblem } from './parse.ts';

test('try', { timeout: 100000 }, async () => {
  const reference = loadReference();
  const highs = await loadHighs();
  const p0 = demoProblem() as any;
  const demo = parseProblem(JSON.parse(JSON.stringify(p0)), reference).problem;
  const f = new Formulation(demo, { reference, highs });
  let t = performance.now();
  for (const r of f.why()) console.log(JSON.stringify(r));
  console.log('why ms', performance.now() - t);
  for (const [a, b] of [[{ aim: 'less', nutrient: 'FAT', on: 'ration' }, { aim: 'near' }], [{ aim: 'cheap' }, { aim: 'varied' }], [{ aim: 'near' }, { aim: 'varied' }], [{ aim: 'less', nutrient: 'FAT', on: 'ration' }, { aim: 'more', nutrient: 'PROCNT', on: 'ration' }], [{ aim: 'few' }, { aim: 'near' }]] as any) {
    t = performance.now();
    const pts = f.frontier(a, b);
    console.log(JSON.stringify([a, b]), pts.length, 'ms', performance.now() - t, pts.map((p) => [p.a.toFixed(3), p.b.toFixed(2)].join('/')).join(' '));
  }
  for (const min of [15]) {
    const p = { ...demo, foods: demo.foods.map((x) => (['sunflower-seed','linseed','sesame','hemp-seed','hemp','sesame-seed'].some((k) => x.id.includes(k.split('-')[0]!)) ? { ...x, min, max: undefined } : x)) };
    const g = new Formulation(p as any, { reference, highs });
    const r = g.solve() as any;
    console.log(p.foods.map((x: any) => [x.id, x.min, x.max]).join(' | '));
    console.log(r.status, r.verdict, JSON.stringify(r.conflict), JSON.stringify(r.remedies, null, 1));
  }
});
