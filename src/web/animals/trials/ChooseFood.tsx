/** Which food is new: searched as one types, among mixes, own foods and the tables. */
import { useState } from 'react';
import { Button, Input, Label, TextField } from 'react-aria-components';
import type { Animal } from '../../../household/model.ts';
import { handledOf } from '../../../household/reckon/foods/handled.ts';
import { words } from '../../../words/words.ts';
import { AllergyMark } from '../../shared/hands/AllergyMark.tsx';
import { useParts } from '../../shared/parts.tsx';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { useFoodSearch, useFoodSearchNote, useReferenceFoods } from '../../worker/engine.ts';
import { type Choosable, choosable, namedFoods } from './food-choices.ts';
import { standingWord } from './standing-word.ts';
import '../../shared/styles/offers.css';

export function ChooseFood(props: { animal: Animal; onChoose(id: string): void; onLeave(): void }) {
  const { animal, onChoose, onLeave } = props;
  const { trials, common } = words();
  const t = trials.choose;
  const { house } = useMixDraft();
  const [query, setQuery] = useState('');
  const { data: found = [], isFetching } = useFoodSearch(query, 40);
  const note = useFoodSearchNote(query);
  const tables = useReferenceFoods(namedFoods(house, animal).map((f) => f.id));
  const foods = choosable(house, animal, query, found, tables);
  const parts = useParts(foods, { part: 20, from: query });

  return (
    <section className="trial-card choose-food" aria-label={t.heading}>
      <h3 tabIndex={-1}>{t.heading}</h3>
      <TextField type="search" value={query} onChange={setQuery} className="search" autoFocus>
        <Label>{t.search}</Label>
        <Input placeholder={t.placeholder} autoComplete="off" />
      </TextField>
      <p className="hint" role="status">
        {isFetching ? t.searching : common.foods(foods.length)}
      </p>
      <p className="hint">{t.never}</p>
      {note && <p role="status">{note}</p>}
      <ul className="offers">
        {parts.shown.map((food) => (
          <Row key={food.id} food={food} onChoose={onChoose} />
        ))}
      </ul>
      {parts.more}
      <div className="button-row">
        <Button className="quiet-button" onPress={onLeave}>
          {t.cancel}
        </Button>
      </div>
    </section>
  );
}

function Row({ food, onChoose }: { food: Choosable; onChoose(id: string): void }) {
  const t = words().trials.choose;
  const { house } = useMixDraft();
  const upset = food.standing.is === 'upset';
  const said = standingWord(food.standing);
  return (
    <li>
      <span className="offer-name">
        {food.name} {said && <span className={`tag ${upset ? 'warn' : ''}`}>{said}</span>}
        <small>{food.note}</small>
        <AllergyMark food={() => handledOf(house, food)} />
      </span>
      <Button
        className="button small"
        isDisabled={upset}
        aria-label={t.pick(food.name)}
        onPress={() => onChoose(food.id)}
      >
        {t.take}
      </Button>
    </li>
  );
}
