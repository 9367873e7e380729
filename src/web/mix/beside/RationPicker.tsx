/** Dialog to add what is fed beside the mix: the keeper's pellets and foods, and the reference foods. */
import { useState } from 'react';
import { tableNote } from '../../../foods/food-name.ts';
import type { Beside } from '../../../formulation/problem/problem.ts';
import type { Mix, OwnFood } from '../../../household/model.ts';
import { type OutRule, rulesOn } from '../../../household/reckon/care/out-foods.ts';
import {
  besideId,
  isFresh,
  ownBeside,
  referenceBeside,
  roomFor,
} from '../../../household/reckon/mix/beside.ts';
import { words } from '../../../words/words.ts';
import { PickerDialog } from '../../shared/PickerDialog.tsx';
import { useFoodSearch, useFoodSearchNote } from '../../worker/engine.ts';
import { outWords } from '../animals/out-words.ts';
import { OfferList } from '../foods/OfferList.tsx';

interface Props {
  mix: Mix;
  /** What may not be fed beside it, whatever id it has. */
  out: readonly OutRule[];
  own: readonly OwnFood[];
  onAdd(food: Beside): void;
}

export function RationPicker(props: Props) {
  const t = words().beside.picker;
  return (
    <PickerDialog label={t.label} title={t.title} className="ration-add">
      <Finder {...props} />
    </PickerDialog>
  );
}

function Finder({ mix, out, own, onAdd }: Props) {
  const [query, setQuery] = useState('');
  const { data: found = [], isFetching } = useFoodSearch(query, 40);
  const note = useFoodSearchNote(query);
  const t = words().beside.picker;
  const sought = query.trim().toLowerCase();
  const mine = own.filter((f) => f.name.toLowerCase().includes(sought));
  function there(id: string, name: string): string | undefined {
    if (mix.problem.beside.some((b) => b.id === id)) return t.fed;
    if (mix.problem.foods.some((f) => f.id === id)) return t.inMix;
    const why = rulesOn(out, { id, name });
    return why.length > 0 ? outWords(why) : undefined;
  }
  const offered = (id: string, name: string, note: string, made: () => Beside) => ({
    id,
    name,
    note,
    there: there(id, name),
    barred: roomFor(mix.problem, id) === 0,
    take: () => onAdd(made()),
  });
  const kindOf = (f: OwnFood) => {
    const kind = f.kind === 'pellet' ? t.pellet : t.own;
    return f.invented ? t.invented(kind) : kind;
  };
  const offers = [
    ...mine
      .toSorted((a, b) => Number(b.kind === 'pellet') - Number(a.kind === 'pellet'))
      .map((f) => offered(f.id, f.name, kindOf(f), () => ownBeside(f, mix.problem))),
    ...found.map((f) => {
      const note = [isFresh(f.composition.WATER) && t.fresh, !f.plain && tableNote(f)];
      return offered(besideId(f), f.name, note.filter(Boolean).join(' · '), () =>
        referenceBeside(f, mix.problem),
      );
    }),
  ];
  return (
    <OfferList
      query={query}
      placeholder={t.placeholder}
      searching={isFetching}
      note={note}
      offers={offers}
      onQuery={setQuery}
    />
  );
}
