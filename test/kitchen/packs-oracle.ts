/** A second opinion on the choice of packs that shares nothing with it: one integer program, solved by GLPK. */
import GLPK from 'glpk.js/node';
import type { PackAim } from '../../src/kitchen/shopping/packs.ts';
import type { PackProblem } from './pack-problems.ts';

let glpk: Awaited<ReturnType<typeof GLPK>> | undefined;

/**
 * Pence and grams of the best choice, the other aim as small as it can then be; undefined where nothing can be bought
 * that meets all needs.
 */
export async function byGlpk({ needs, offers, sellers }: PackProblem, aim: PackAim) {
  glpk ??= await GLPK();
  const g = glpk;
  const used = sellers.filter((s) => offers.some((o) => o.seller === s.seller));
  const most = 400;
  const base = [
    ...needs.map((need, i) => ({
      name: `need${i}`,
      vars: offers.filter((o) => o.food === need.food).map((o) => ({ name: o.id, coef: o.packGrams })),
      bnds: { type: g.GLP_LO, lb: need.grams, ub: 0 },
    })),
    ...used.flatMap((s) =>
      offers
        .filter((o) => o.seller === s.seller)
        .map((o) => ({
          name: `if ${o.id}`,
          vars: [
            { name: o.id, coef: 1 },
            { name: s.seller, coef: -most },
          ],
          bnds: { type: g.GLP_UP, lb: 0, ub: 0 },
        })),
    ),
    ...used
      .filter((s) => s.minimumOrder! > 0)
      .map((s) => ({
        name: `least ${s.seller}`,
        vars: [
          ...offers
            .filter((o) => o.seller === s.seller)
            .map((o) => ({ name: o.id, coef: Math.round(o.price * 100) })),
          { name: s.seller, coef: -Math.round(s.minimumOrder! * 100) },
        ],
        bnds: { type: g.GLP_LO, lb: 0, ub: 0 },
      })),
  ];
  const pence = [
    ...offers.map((o) => ({ name: o.id, coef: Math.round(o.price * 100) })),
    ...used.map((s) => ({ name: s.seller, coef: Math.round(s.delivery! * 100) })),
  ];
  const grams = offers.map((o) => ({ name: o.id, coef: o.packGrams }));
  const solve = async (vars: typeof pence, more: typeof base) => {
    const { result } = await g.solve(
      {
        name: 'packs',
        objective: { direction: g.GLP_MIN, name: 'least', vars },
        subjectTo: [...base, ...more],
        bounds: offers.map((o) => ({ name: o.id, type: g.GLP_DB, lb: 0, ub: most })),
        generals: offers.map((o) => o.id),
        binaries: used.map((s) => s.seller),
      },
      { msglev: g.GLP_MSG_OFF, presol: true, mipgap: 0, tmlim: 20 },
    );
    return result.status === g.GLP_OPT ? Math.round(result.z) : undefined;
  };
  const [first, second] = aim === 'cost' ? [pence, grams] : [grams, pence];
  const best = await solve(first, []);
  if (best === undefined) return undefined;
  const then = await solve(second, [
    { name: 'kept', vars: first, bnds: { type: g.GLP_UP, lb: 0, ub: best } },
  ]);
  if (then === undefined) return undefined;
  return aim === 'cost' ? { pence: best, grams: then } : { pence: then, grams: best };
}
