/** Dialog to add what is fed beside the mix: the keeper's pellets and foods, and the reference foods. */
import { useState } from 'react';
import type { ReferenceFood } from '../../../foods/reference.ts';
import type { Beside, Problem } from '../../../formulation/problem/problem.ts';
import type { Mix, OwnFood } from '../../../household/model.ts';
import { besideFromOwn, ingredientFromReference } from '../../../household/reckon/mix-edits.ts';
import { canBeAirDry } from '../../../nutrition/air-dry.ts';
import { PickerDialog } from '../../shared/PickerDialog.tsx';
import { tableNote } from '../../shared/table-name.ts';
import { useFoodSearch } from '../../worker/engine.ts';
import { OfferList } from '../OfferList.tsx';
import { FRESH_WATER, roomFor } from './ration.ts';

/** What a food beside begins with, percent of the ration; a pellet is half of it (common practice, no source). */
const START = { pellet: 50, dry: 5, fresh: 1 } as const;

interface Props {
  mix: Mix;
  own: readonly OwnFood[];
  onAdd(food: Beside): void;
}

export function RationPicker(props: Props) {
  return (
    <PickerDialog label="Add what is fed beside" title="Fed beside the mix" className="ration-add">
      <Finder {...props} />
    </PickerDialog>
  );
}

function Finder({ mix, own, onAdd }: Props) {
  const [query, setQuery] = useState('');
  const { data: found = [], isFetching } = useFoodSearch(query, 40);
  const words = query.trim().toLowerCase();
  const mine = own.filter((f) => f.name.toLowerCase().includes(words));
  const there = (id: string) =>
    mix.problem.beside.some((b) => b.id === id)
      ? 'Fed'
      : mix.problem.foods.some((f) => f.id === id)
        ? 'In the mix'
        : undefined;
  const offered = (id: string, name: string, note: string, made: () => Beside) => ({
    id,
    name,
    note,
    there: there(id),
    barred: roomFor(mix.problem, id) === 0,
    take: () => onAdd(made()),
  });
  const kindOf = (f: OwnFood) =>
    `${f.kind === 'pellet' ? 'pellet' : 'own food'}${f.invented ? ', invented' : ''}`;
  const offers = [
    ...mine
      .toSorted((a, b) => Number(b.kind === 'pellet') - Number(a.kind === 'pellet'))
      .map((f) => offered(f.id, f.name, kindOf(f), () => fromOwn(f, mix.problem))),
    ...found.map((f) => {
      const note = [isFresh(f.composition.WATER) && 'fresh', !f.plain && tableNote(f)];
      return offered(idOf(f), f.name, note.filter(Boolean).join(' · '), () => fromReference(f, mix.problem));
    }),
  ];
  return (
    <OfferList
      query={query}
      placeholder="cucumber, dandelion, a pellet…"
      searching={isFetching}
      offers={offers}
      onQuery={setQuery}
    />
  );
}

/** The same food may be in the mix too, so beside it has an id of its own. */
function idOf(food: ReferenceFood): string {
  return `beside-${ingredientFromReference(food).id}`;
}

function isFresh(water: number | undefined): boolean {
  return canBeAirDry(water) && water >= FRESH_WATER;
}

function fromOwn(food: OwnFood, problem: Problem): Beside {
  const fresh = isFresh(food.composition.WATER);
  const start = fresh ? START.fresh : food.kind === 'pellet' ? START.pellet : START.dry;
  return airDry(besideFromOwn(food, Math.min(start, roomFor(problem, food.id))), fresh);
}

function fromReference(food: ReferenceFood, problem: Problem): Beside {
  const fresh = isFresh(food.composition.WATER);
  const share_of_ration = Math.min(fresh ? START.fresh : START.dry, roomFor(problem, idOf(food)));
  return airDry({ id: idOf(food), name: food.name, ref: food.ref, share_of_ration }, fresh);
}

function airDry(food: Beside, fresh: boolean): Beside {
  return fresh ? { ...food, counts_as: 'air dry' } : food;
}
