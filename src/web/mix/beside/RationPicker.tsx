/** Dialog to add what is fed beside the mix: the keeper's pellets and foods, and the reference foods. */
import { useState } from 'react';
import type { Beside } from '../../../formulation/problem/problem.ts';
import type { Mix, OwnFood } from '../../../household/model.ts';
import {
  besideId,
  isFresh,
  ownBeside,
  referenceBeside,
  roomFor,
} from '../../../household/reckon/mix/beside.ts';
import { PickerDialog } from '../../shared/PickerDialog.tsx';
import { tableNote } from '../../shared/table-name.ts';
import { useFoodSearch, useFoodSearchNote } from '../../worker/engine.ts';
import { OfferList } from '../foods/OfferList.tsx';

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
  const note = useFoodSearchNote(query);
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
      .map((f) => offered(f.id, f.name, kindOf(f), () => ownBeside(f, mix.problem))),
    ...found.map((f) => {
      const note = [isFresh(f.composition.WATER) && 'fresh', !f.plain && tableNote(f)];
      return offered(besideId(f), f.name, note.filter(Boolean).join(' · '), () =>
        referenceBeside(f, mix.problem),
      );
    }),
  ];
  return (
    <OfferList
      query={query}
      placeholder="cucumber, dandelion, a pellet…"
      searching={isFetching}
      note={note}
      offers={offers}
      onQuery={setQuery}
    />
  );
}
