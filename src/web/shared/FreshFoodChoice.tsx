/** Which fresh food is bought and dried: suggested by the tables and by the name, or any other. */

import { useState } from 'react';
import { Button, Input, Label, SearchField } from 'react-aria-components';
import { tableNote } from '../../foods/food-name.ts';
import type { ReferenceFood } from '../../foods/reference.ts';
import { freshPairsOf, freshWords, looksFresh } from '../../household/reckon/foods/fresh-food.ts';
import { words } from '../../words/words.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { useFoodSearch, useReferenceFoods } from '../worker/engine.ts';
import { PickerDialog } from './PickerDialog.tsx';
import { useParts } from './parts.tsx';
import './styles/offers.css';
import './FreshFoodChoice.css';

/** How many are suggested. */
const MOST = 3;

interface Props {
  readonly food: string;
  readonly name: string;
  /** Reference number of the food as it is mixed. */
  readonly dried: string | undefined;
  /** Whether to suggest some at once. */
  readonly suggest: boolean;
  onChoose(fresh: string): void;
}

export function FreshFoodChoice({ food, name, dried, suggest, onChoose }: Props) {
  const pairs = freshPairsOf(dried);
  const paired = useReferenceFoods(pairs);
  const t = words().shared.fresh;
  const fresh = freshWords(name);
  const { data: found = [] } = useFoodSearch(fresh, 20);
  const all = [...pairs.flatMap((p) => paired.get(p) ?? []), ...found.filter(looksFresh)];
  const likely = [...new Map(all.map((f) => [f.ref, f])).values()].slice(0, MOST);
  return (
    <div className="fresh-choice">
      {suggest && likely.length > 0 && (
        <>
          <p>{t.which}</p>
          <ul>
            {likely.map((f) => (
              <li key={f.ref}>
                <Button
                  className="button small"
                  aria-label={t.dryFrom(name, f.name)}
                  onPress={() => onChoose(f.ref)}
                >
                  {f.name}
                </Button>{' '}
                <small>{noteOf(f)}</small>
              </li>
            ))}
          </ul>
        </>
      )}
      <PickerDialog label={suggest ? t.another : t.change} title={t.title(name)} className="small">
        <Finder food={food} first={fresh} choose={onChoose} />
      </PickerDialog>
    </div>
  );
}

function Finder(props: { food: string; first: string; choose(fresh: string): void }) {
  const t = words().shared.fresh;
  const { house } = useMixDraft();
  const [query, setQuery] = useState(props.first);
  const { data: found = [], isFetching } = useFoodSearch(query, 40);
  const typed = query.trim().toLowerCase();
  const own = house.foods.filter(
    (f) => f.kind === 'mix' && f.id !== props.food && f.name.toLowerCase().includes(typed),
  );
  const offers = [
    ...own.map((f) => ({ id: f.id, name: f.name, note: t.own(waterWords(f.composition.WATER)) })),
    ...found.map((f) => ({ id: f.ref, name: f.name, note: noteOf(f) })),
  ];
  const parts = useParts(offers, { part: 60, from: query });
  return (
    <>
      <SearchField value={query} onChange={setQuery} autoFocus className="search">
        <Label>{t.search}</Label>
        <Input placeholder={t.example} />
      </SearchField>
      <p className="hint" aria-live="polite">
        {isFetching ? t.searching : words().common.foods(offers.length)}
      </p>
      <ul className="offers">
        {parts.shown.map(({ id, name, note }) => (
          <li key={id}>
            <span className="offer-name">
              {name} <small>{note}</small>
            </span>
            <Button
              slot="close"
              className="button small"
              aria-label={t.chooseOne(name)}
              onPress={() => props.choose(id)}
            >
              {t.choose}
            </Button>
          </li>
        ))}
      </ul>
      {parts.more}
    </>
  );
}

const waterWords = (water: number | undefined) =>
  water === undefined ? words().shared.fresh.noWater : words().shared.fresh.water(water);

const noteOf = (f: ReferenceFood) =>
  [waterWords(f.composition.WATER), tableNote(f)].filter(Boolean).join(' · ');
