/** What a settled table comes to: foods of the keeper's own and, where it has shares, a mix. Nothing is written here. */

import { CRUDE_FACTOR } from '../../../foods/crude-protein.ts';
import { withEvidence } from '../../../foods/evidence.ts';
import { countOf } from '../../../foods/figures.ts';
import type { ReferenceFood } from '../../../foods/reference.ts';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { Day } from '../../../kitchen/model.ts';
import type { TargetProfile } from '../../../targets/profile.ts';
import { words } from '../../../words/words.ts';
import type { Mix, OwnFood } from '../../model.ts';
import { ingredientFromOwn, ingredientFromReference, newMix } from '../../reckon/mix/mix-edits.ts';
import { cut } from './grid.ts';
import { round } from './read-shares.ts';
import type { ReadTable, ReadTableRow } from './read-table.ts';

export interface TableProposal {
  readonly foods: readonly OwnFood[];
  readonly mix?: Mix;
  /** What the keeper is told beside it. */
  readonly notes: readonly string[];
}

export interface ProposalFor {
  /** What the keeper calls the table: the source of its figures. */
  readonly tableName: string;
  readonly today: Day;
  /** ISO 8601 time, UTC. */
  readonly now: string;
  readonly newId: () => string;
  /** The target of the mix. */
  readonly profile: TargetProfile;
  readonly ownFoods: readonly OwnFood[];
  readonly references: ReadonlyMap<string, ReferenceFood>;
  /** Name of the mix; without one only foods come in. */
  readonly mixName?: string;
}

/** @throws RangeError where the table is not settled, or a food chosen for a row is not there */
export function proposalOf(table: ReadTable, about: ProposalFor): TableProposal {
  if (!table.settled) throw new RangeError('the table has open questions; answer them first');
  const notes: string[] = [];
  const foods: OwnFood[] = [];
  const used: { readonly ingredient: Ingredient; readonly share?: number }[] = [];
  const names = namesOf(table.rows);
  for (const row of table.rows) {
    const { become, share } = row;
    if (!become || become.as === 'left-out') continue;
    if (become.as === 'own') {
      const food = ownFood(row, names.get(row) ?? row.name, about);
      foods.push(food);
      used.push({ ingredient: ingredientFromOwn(food), share });
    } else if (become.as === 'kept') {
      const food = about.ownFoods.find((f) => f.id === become.id);
      if (!food) throw new RangeError(`${row.name}: the food chosen for it is gone; choose again`);
      used.push({ ingredient: ingredientFromOwn(food), share });
    } else {
      const food = about.references.get(become.ref);
      if (!food) throw new RangeError(`${row.name}: there is no reference food ${become.ref}; choose again`);
      used.push({ ingredient: ingredientFromReference(food), share });
    }
  }
  const mixed = used.filter((u) => u.share !== undefined && u.share > 0);
  if (about.mixName === undefined || mixed.length === 0) return { foods, notes };
  const without = used.length - mixed.length;
  if (without > 0) notes.push(words().ownTable.outcome.noShare(without));
  return { foods, mix: mixOf(mixed, about.mixName, about, notes), notes };
}

function mixOf(
  mixed: readonly { readonly ingredient: Ingredient; readonly share?: number }[],
  name: string,
  { newId, profile, now }: ProposalFor,
  notes: string[],
): Mix {
  const shares = new Map<string, number>();
  const foods = new Map<string, Ingredient>();
  for (const { ingredient, share = 0 } of mixed) {
    if (foods.has(ingredient.id))
      notes.push(words().ownTable.outcome.added(ingredient.name ?? ingredient.id));
    else foods.set(ingredient.id, ingredient);
    shares.set(ingredient.id, round((shares.get(ingredient.id) ?? 0) + share));
  }
  const sum = [...shares.values()].reduce((a, b) => a + b, 0);
  if (Math.abs(sum - 100) > 0.05) notes.push(words().ownTable.outcome.sum(round(sum)));
  const mix = newMix({ id: newId(), name, profile, at: now });
  return {
    ...mix,
    problem: {
      ...mix.problem,
      foods: [...foods.values()].map((f) => ({ ...f, want: Math.min(100, shares.get(f.id) ?? 0) })),
    },
    shares: Object.fromEntries(shares),
  };
}

function ownFood(row: ReadTableRow, name: string, { tableName, today, newId }: ProposalFor): OwnFood {
  const source = cut(row.source ? `${tableName}: ${row.source}` : tableName, MOST_WORDS);
  const bare: OwnFood = {
    id: newId(),
    name,
    kind: 'mix',
    ...(row.group && { group: row.group }),
    composition: {},
    sd: {},
    ...(row.pricePerKg !== undefined && { pricePerKg: row.pricePerKg }),
    source,
    invented: false,
  };
  if (countOf(row.figures) === 0) return bare;
  const factor = row.figures.composition.PROCNT === undefined ? {} : { proteinFactor: CRUDE_FACTOR };
  // The figures stand as fed by now, whatever the table printed.
  const told = {
    id: newId(),
    name: cut(source, MOST_NAME),
    date: today,
    basis: 'as fed' as const,
    ...row.figures,
    ...factor,
  };
  return withEvidence(bare, { sources: [told] });
}

const MOST_NAME = 200;
const MOST_WORDS = 1000;

/** Names of the rows that become foods of their own, told apart where two are the same. */
function namesOf(rows: readonly ReadTableRow[]): ReadonlyMap<ReadTableRow, string> {
  const seen = new Map<string, number>();
  return new Map(
    rows
      .filter((r) => r.become?.as === 'own')
      .map((r) => {
        const name = cut(r.name, MOST_NAME - 10);
        const n = (seen.get(name) ?? 0) + 1;
        seen.set(name, n);
        return [r, n === 1 ? name : `${name} (${n})`];
      }),
  );
}
