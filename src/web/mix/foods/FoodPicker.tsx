/** Dialog to add foods: the keeper's own and the reference foods, searched as you type. */

import { useState } from 'react';
import { tableNote } from '../../../foods/food-name.ts';
import { printedTexts } from '../../../foods/printed-texts.ts';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { OwnFood } from '../../../household/model.ts';
import { type OutRule, rulesOn } from '../../../household/reckon/care/out-foods.ts';
import {
  groupName,
  ingredientFromOwn,
  ingredientFromReference,
  OTHER,
} from '../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../words/words.ts';
import { PickerDialog } from '../../shared/PickerDialog.tsx';
import { useFoodSearch, useFoodSearchNote } from '../../worker/engine.ts';
import { outWords } from '../animals/out-words.ts';
import { OfferList } from './OfferList.tsx';

interface Props {
  /** Of the mix. */
  foods: readonly Ingredient[];
  /** What may not go into it, whatever id it has. */
  out: readonly OutRule[];
  own: readonly OwnFood[];
  onAdd(food: Ingredient): void;
}

/** @param label what the button says */
export function FoodPicker({ label, ...props }: Props & { label: string }) {
  return (
    <PickerDialog label={label} title={words().mix.offers.title} className="add-food">
      <Finder {...props} />
    </PickerDialog>
  );
}

function Finder({ foods, out, own, onAdd }: Props) {
  const t = words().mix.offers;
  const [query, setQuery] = useState('');
  const { data: found = [], isFetching } = useFoodSearch(query, 40);
  const note = useFoodSearchNote(query);
  const typed = query.trim().toLowerCase();
  const mine = own.filter((f) => f.kind === 'mix' && f.name.toLowerCase().includes(typed));
  const inMix = new Set(foods.flatMap((f) => [f.id, f.ref ?? f.id]));
  const offered = (id: string, name: string, group: string | undefined, note: string) => {
    const why = rulesOn(out, { id, name });
    return {
      id,
      name,
      note: [groupName(group ?? OTHER), note].filter(Boolean).join(' · '),
      there: inMix.has(id) ? t.inMix : why.length > 0 ? outWords(why) : undefined,
    };
  };
  const offers = [
    ...mine.map((f) => ({
      ...offered(f.id, f.name, f.group, t.own),
      handled: () => ({ name: f.name, lists: printedTexts(f.evidence) }),
      take: () => onAdd(ingredientFromOwn(f)),
    })),
    ...found.map((f) => ({
      ...offered(f.ref, f.name, f.group, f.plain ? '' : tableNote(f)),
      handled: () => f,
      take: () => onAdd(ingredientFromReference(f)),
    })),
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
