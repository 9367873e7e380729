/** From which packs and trays a food comes, the oldest first, and what is passed over. */
import { groupsIn } from '../../household/reckon/cupboard/lot-foods.ts';
import { lotState } from '../../household/reckon/cupboard/lot-state.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Lot } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import type { ShoppingLine } from '../../kitchen/shopping/shopping-list.ts';
import { words } from '../../words/words.ts';
import { lotWords } from '../shared/lots/lot-words.ts';
import { linkTo } from '../shared/route.ts';
import { today } from '../shared/today.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';

export function FromStock({ line }: { line: ShoppingLine }) {
  const { house } = useMixDraft();
  const t = words().shopping.stock;
  const { fromLots, fromTrays, passed } = line;
  if (fromLots.length + fromTrays.length + passed.length === 0) return null;
  const day = today();
  const group = groupsIn(house)(line.food);
  const link = (lot: Lot) => ({ lot: () => <a href={linkTo('cupboard', lot.id)}>{lot.name}</a> });
  const wordsOf = (lot: Lot) => {
    if (lot.form === 'fresh') return t.freshFirst;
    // Of a lot that the list takes from, some is left.
    const state = lotState({ lot, grams: 1 }, day, group);
    return state.kind === 'ready' ? undefined : lotWords(lot, state, day);
  };
  return (
    <ul className="shop-lots" aria-label={t.label(line.name)}>
      {fromLots.map(({ lot, grams, asMixed }) => (
        <li key={lot.id}>
          <Sentence
            of={
              lot.form === 'fresh' ? t.fromFresh(sayGrams(grams), sayGrams(asMixed)) : t.from(sayGrams(grams))
            }
            with={link(lot)}
          />{' '}
          <small>{[t.bought(dayInWords(lot.boughtOn, day)), wordsOf(lot)].filter(Boolean).join('; ')}</small>
        </li>
      ))}
      {fromTrays.map(({ run, lot, asMixed }) => (
        <li key={run.id}>
          <Sentence
            of={t.fromTrays(sayGrams(asMixed))}
            with={{ run: () => <a href={linkTo('drying', run.id)}>{t.onTrays(lot.name)}</a> }}
          />
        </li>
      ))}
      {passed.map(({ lot, grams, onTrays, why }) => (
        <li key={`${lot.id}${onTrays ? ' on trays' : ''}`} className="shop-passed">
          <Sentence
            of={(onTrays ? t.passedTrays : t.passed)(sayGrams(grams))}
            with={{ ...link(lot), why: () => why }}
          />
        </li>
      ))}
    </ul>
  );
}
