/** A food of the keeper's own: its name and kind, what its label says, and its list of ingredients. */

import { useEffect, useRef, useState } from 'react';
import { Button, Form, Input, Label, TextField } from 'react-aria-components';
import { type Evidence, withEvidence } from '../../foods/evidence.ts';
import { FOOD_GROUPS, type FoodGroup } from '../../foods/food.ts';
import type { OwnFood } from '../../household/model.ts';
import { soleSource, sourceWith } from '../../household/reckon/foods/label-source.ts';
import { speciesFed } from '../../household/reckon/mix/eaters.ts';
import { words } from '../../words/words.ts';
import { Choice } from '../shared/Choice.tsx';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { IngredientPaste, MOST_INGREDIENT_TEXT } from '../shared/label/IngredientPaste.tsx';
import { NumberInput } from '../shared/NumberInput.tsx';
import { today } from '../shared/today.ts';
import { NameInput } from '../shared/typing/NameInput.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';
import { useSaveFood } from '../store/save-food.ts';
import { FigureForm, type FigureResult } from './FigureForm.tsx';
import { NameCautions } from './NameCautions.tsx';

export function OwnFoodForm({ food: now, onDone }: { food?: OwnFood; onDone(id?: string): void }) {
  const { house, mix } = useMixDraft();
  const species = speciesFed(mix, house.animals);
  const { foods, common } = words();
  const t = foods.form;
  /** As it stood when the form was opened: only what is changed here is changed. */
  const [food] = useState(now);
  const { save, error, isPending } = useSaveFood();
  const [source] = useState(() => food && soleSource(food));
  const [name, setName] = useState(food?.name ?? '');
  const [kind, setKind] = useState<OwnFood['kind']>(food?.kind ?? 'mix');
  const [group, setGroup] = useState<FoodGroup | ''>(food?.group ?? '');
  const [price, setPrice] = useState(food?.pricePerKg);
  const [from, setFrom] = useState(source?.name ?? food?.source ?? t.label);
  const [result, setResult] = useState<FigureResult>();
  const [ingredients, setIngredients] = useState(food?.evidence?.ingredients ?? '');
  const [tried, setTried] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  const nameField = useRef<HTMLInputElement>(null);
  // From here one Tab leads to the name, and a screen reader says where it is.
  useEffect(() => heading.current?.focus(), []);

  const sources = food?.evidence?.sources ?? [];
  const several = sources.length > 1;
  const nameless = name.trim() === '';
  const faults = several ? [] : (result?.faults ?? []);
  const listTooLong = ingredients.length > MOST_INGREDIENT_TEXT;

  function evidence(): Evidence {
    const { ingredients: _was, ...rest } = food?.evidence ?? {};
    const list = ingredients.trim() === '' ? {} : { ingredients };
    if (several) return { ...rest, ...list };
    const about = { id: newId(), name: from, today: today(), before: source };
    return { ...rest, ...list, sources: result ? [sourceWith(result, about)] : [] };
  }

  function cancel() {
    onDone(food?.id);
    focusWhenThere(food ? '.food-page h2' : '.finder .list-head button');
  }

  async function submit() {
    if (isPending) return;
    setTried(true);
    if (nameless) return nameField.current?.focus();
    if (faults.length > 0 || listTooLong) return;
    const bare: OwnFood = {
      id: food?.id ?? newId(),
      name: name.trim(),
      kind,
      group: group || undefined,
      composition: {},
      sd: {},
      pricePerKg: price,
      source: several ? (food?.source ?? '') : from,
      invented: food?.invented ?? false,
    };
    const kept = withEvidence(bare, evidence());
    await save(kept, food);
    onDone(kept.id);
    focusWhenThere('.food-page h2');
  }

  return (
    <Form
      className="own-form"
      onSubmit={(e) => {
        e.preventDefault();
        submit().catch(() => {}); // `error` says why
      }}
    >
      <h2 ref={heading} tabIndex={-1}>
        {food ? t.edit(food.name) : t.new}
      </h2>
      <div className="fields">
        <TextField className="wide" value={name} onChange={setName} isInvalid={tried && nameless}>
          <Label>{common.name}</Label>
          <NameInput ref={nameField} autoComplete="off" />
        </TextField>
        <NameCautions name={name} species={species} />
        <Choice
          label={t.kind}
          value={kind}
          options={[
            ['mix', t.forMix],
            ['pellet', foods.completePellet],
          ]}
          onChange={setKind}
        />
        {kind === 'mix' && (
          <Choice
            label={t.group}
            value={group}
            options={[['', t.noGroup], ...(Object.entries(FOOD_GROUPS) as [FoodGroup, string][])]}
            onChange={setGroup}
          />
        )}
        <NumberInput label={t.price} min={0} value={price} onCommit={setPrice} />
        {!several && (
          <TextField value={from} onChange={setFrom}>
            <Label>{t.source}</Label>
            <Input autoComplete="off" />
          </TextField>
        )}
      </div>
      {several ? (
        <p className="notice-line">{t.severalSources(sources.length)}</p>
      ) : (
        <FigureForm initial={source} about={{ name, group: group || undefined, kind }} onChange={setResult} />
      )}
      <IngredientPaste text={ingredients} onChange={setIngredients} species={species} />
      {tried && nameless && (
        <p role="alert" className="field-error">
          {t.nameless}
        </p>
      )}
      {tried && (faults.length > 0 || listTooLong) && (
        <p role="alert" className="field-error">
          {listTooLong ? t.listTooLong : t.cannotBe}
        </p>
      )}
      <Failed error={error} />
      <div className="button-row">
        <Button type="submit" className="button strong">
          {t.save}
        </Button>
        <Button className="quiet-button" onPress={cancel}>
          {common.cancel}
        </Button>
      </div>
    </Form>
  );
}
