/** One food: what to beware of, what it holds, where its figures come from, and what may be made of it. */

import { useState } from 'react';
import { Button } from 'react-aria-components';
import { cautionsFor } from '../../foods/cautions/find.ts';
import { withEvidence } from '../../foods/evidence.ts';
import type { Food } from '../../foods/food.ts';
import { tableNote } from '../../foods/food-name.ts';
import { sourceWords } from '../../foods/source-words.ts';
import type { OwnFood } from '../../household/model.ts';
import { handledOf } from '../../household/reckon/foods/handled.ts';
import { ownFromReference } from '../../household/reckon/foods/own-food.ts';
import { speciesFed } from '../../household/reckon/mix/eaters.ts';
import {
  addFood,
  groupName,
  ingredientFromOwn,
  ingredientFromReference,
} from '../../household/reckon/mix/mix-edits.ts';
import type { Tag } from '../../nutrition/nutrients.ts';
import { words } from '../../words/words.ts';
import { CautionWords } from '../shared/CautionWords.tsx';
import { Failed } from '../shared/Failed.tsx';
import { focusWhenThere } from '../shared/focus.ts';
import { FoodHands } from '../shared/hands/FoodHands.tsx';
import { IngredientReading } from '../shared/label/IngredientPaste.tsx';
import { go } from '../shared/route.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { newId } from '../store/new-id.ts';
import { useSaveFood } from '../store/save-food.ts';
import { BorrowDialog } from './BorrowDialog.tsx';
import { type Deleted, DeleteFood } from './DeleteFood.tsx';
import { FoodAmounts } from './FoodAmounts.tsx';
import { Listed } from './Listed.tsx';
import { MakeForm } from './MakeForm.tsx';
import { SourcesSection } from './SourcesSection.tsx';
import '../shared/styles/cautions.css';
import './foods.css';
import './composition.css';

interface Props {
  food: Food & { tableName?: string; also?: readonly string[]; refuse?: number };
  own?: OwnFood;
  onEdit?(): void;
  onDeleted?(deleted: Deleted): void;
}

export function FoodPage({ food, own, onEdit, onDeleted }: Props) {
  const { house, mix, change } = useMixDraft();
  const species = speciesFed(mix, house.animals);
  const { foods, common } = words();
  const t = foods.page;
  const { save, error } = useSaveFood();
  const [asking, setAsking] = useState(false);
  const [borrowing, setBorrowing] = useState<Tag>();
  const inMix = mix?.problem.foods.some((f) => f.id === food.ref || f.ref === food.ref);
  const cautions = cautionsFor({ ...food, ref: own ? undefined : food.ref }, species);
  const ingredient = own ? ingredientFromOwn(own) : ingredientFromReference(food);

  async function keepAsOwn() {
    const made = ownFromReference(food, newId);
    await save(made, undefined);
    go('foods', made.id);
  }

  function takeBack(tag: Tag) {
    if (!own) return;
    const { [tag]: _gone, ...borrowed } = own.evidence?.borrowed ?? {};
    void save(withEvidence(own, { ...own.evidence, borrowed }), own).catch(() => {});
  }

  return (
    <article className="food-page">
      <header>
        <h2 tabIndex={-1}>
          {food.name} {own?.invented && <span className="tag">{foods.invented}</span>}
        </h2>
        <p className="hint">
          {[
            own?.kind === 'pellet' ? foods.completePellet : food.group && groupName(food.group),
            food.tableName && tableNote({ name: food.name, tableName: food.tableName }),
            sourceWords(food.source),
          ]
            .filter(Boolean)
            .join(' · ')}
        </p>
      </header>
      {cautions.length > 0 && (
        <ul className="cautions" aria-label={t.cautions}>
          {cautions.map(({ caution }) => (
            <li key={caution.id} className={`caution-card ${caution.severity}`}>
              <CautionWords caution={caution} />
            </li>
          ))}
        </ul>
      )}
      {own && <Listed own={own} species={species} />}
      <FoodHands full food={own ? handledOf(house, { id: own.id, name: food.name }) : food} />
      <div className="button-row">
        {mix && own?.kind !== 'pellet' && (
          <Button
            className="button"
            isDisabled={inMix || cautions.some((c) => c.caution.severity === 'never')}
            onPress={() => change((m) => addFood(m, ingredient))}
          >
            {inMix ? t.inMix : t.addToMix}
          </Button>
        )}
        {own ? (
          <>
            <Button className="quiet-button" onPress={onEdit}>
              {t.edit}
            </Button>
            {!asking && (
              <Button
                className="quiet-button ask-delete"
                onPress={() => {
                  setAsking(true);
                  focusWhenThere('.asking .keep');
                }}
              >
                {common.delete}
              </Button>
            )}
          </>
        ) : (
          <Button className="quiet-button" onPress={() => void keepAsOwn().catch(() => {})}>
            {t.keepOwn}
          </Button>
        )}
      </div>
      {own && asking && (
        <DeleteFood own={own} onKeep={() => setAsking(false)} onDeleted={(gone) => onDeleted?.(gone)} />
      )}
      <Failed error={error} />
      <FoodAmounts food={food} own={own} onBorrow={setBorrowing} onTakeBack={takeBack} />
      {!own && <MakeForm food={food} />}
      {own && <SourcesSection own={own} />}
      {own?.evidence?.ingredients && (
        <section aria-label={t.list}>
          <h3>{t.list}</h3>
          <IngredientReading text={own.evidence.ingredients} species={species} />
        </section>
      )}
      {own && borrowing && (
        <BorrowDialog
          own={own}
          tag={borrowing}
          onClose={() => setBorrowing(undefined)}
          onBorrow={(lent) =>
            void save(
              withEvidence(own, {
                ...own.evidence,
                borrowed: { ...own.evidence?.borrowed, [borrowing]: lent },
              }),
              own,
            ).catch(() => {})
          }
        />
      )}
    </article>
  );
}
