/** The third step: one box for the names of all foods, a row for each, and the press that makes the mix fit. */
import { useRef, useState } from 'react';
import { Button, Label, Text, TextArea, TextField } from 'react-aria-components';
import { removeFood } from '../../household/reckon/mix/mix-edits.ts';
import { replaceFood } from '../../household/reckon/mix/replace-food.ts';
import { words } from '../../words/words.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { go } from '../shared/route.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { FoodRow } from './FoodRow.tsx';
import { OpenNames } from './OpenNames.tsx';
import { TableAsk } from './TableAsk.tsx';
import { useFoodWords, useMatches } from './useFoodWords.ts';
import type { OwnMix } from './useOwnMix.ts';

export function FoodsStep({ own }: { own: OwnMix }) {
  const t = words().start.foods;
  const { undo } = useMixDraft();
  const typed = useFoodWords(own);
  const box = useRef<HTMLTextAreaElement>(null);
  const [working, setWorking] = useState(false);
  const [fault, setFault] = useState<string>();
  const [gone, setGone] = useState<string>();
  const foods = own.mix?.problem.foods ?? [];
  const wordsOf = (f: (typeof foods)[number]) => typed.typedFor(f.id) ?? f.name ?? f.id;
  const matches = useMatches(foods.map(wordsOf));

  async function makeFit() {
    if (working) return;
    setWorking(true);
    const wrong = await own.makeFit().catch((error: Error) => error.message);
    setWorking(false);
    setFault(wrong);
    if (wrong !== undefined) return;
    go('mix');
    focusWhenThere('.mix-head h1');
  }

  return (
    <div className="start-foods">
      <TextField className="wide" value={typed.box} onChange={typed.setBox}>
        <Label>{t.box}</Label>
        <TextArea
          ref={box}
          rows={3}
          spellCheck={false}
          autoComplete="off"
          autoCapitalize="off"
          onKeyDown={(e) => {
            if (e.key !== 'Enter' || e.shiftKey || e.nativeEvent.isComposing) return;
            e.preventDefault();
            typed.add();
          }}
        />
        <Text slot="description" className="hint">
          {t.hint}
        </Text>
      </TextField>
      <div className="button-row">
        <Button
          className="button"
          onPress={() => {
            typed.add();
            box.current?.focus();
          }}
        >
          {t.add}
        </Button>
        <Button className="big-button" isDisabled={foods.length === 0} onPress={() => void makeFit()}>
          {t.makeFit}
        </Button>
      </div>
      <p role="status" className="start-told">
        {working
          ? t.working
          : typed.working
            ? t.lookingUp
            : typed.told && t.told(typed.told.added, typed.told.there)}
        {foods.length > 0 && ` ${t.count(foods.length)}`}
      </p>
      {typed.told && typed.told.left.length > 0 && (
        <ul className="start-left" role="alert">
          {typed.told.left.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
      {(fault ?? typed.fault) !== undefined && (
        <p role="alert" className="field-error">
          {fault ?? typed.fault}
        </p>
      )}
      {typed.questions.length > 0 && (
        <TableAsk questions={typed.questions} answers={typed.answers} onAnswer={typed.answer} />
      )}
      <OpenNames names={typed.open} onSettle={typed.settle} />
      {gone !== undefined && (
        <p className="notice-line" role="status">
          {t.removed(gone)}{' '}
          {undo && (
            <Button
              className="quiet-button small"
              onPress={() => {
                undo();
                setGone(undefined);
                box.current?.focus();
              }}
            >
              {words().common.undo}
            </Button>
          )}
        </p>
      )}
      {foods.length > 0 && (
        <ul className="start-rows" aria-label={t.rows}>
          {foods.map((food) => (
            <FoodRow
              key={food.id}
              food={food}
              typed={typed.typedFor(food.id)}
              match={matches.get(wordsOf(food))}
              onInstead={(other) => {
                typed.retyped(other.id, wordsOf(food));
                own.edit((m) => replaceFood(m, food.id, other));
              }}
              onRemove={() => {
                setGone(food.name ?? food.id);
                own.edit((m) => removeFood(m, food.id));
                box.current?.focus();
              }}
            />
          ))}
        </ul>
      )}
    </div>
  );
}
