/** The plan of a trial: how much, how often, from which day, beside what; and what is to be known of the food before. */

import { type FormEvent, useEffect, useRef, useState } from 'react';
import { Button, Form } from 'react-aria-components';
import { speciesKind } from '../../../care/animal/species.ts';
import { ADULT_WEIGHTS } from '../../../care/figures/adult-weights.ts';
import type { Trial } from '../../../care/model.ts';
import { OFFERS, PER_100_GRAMS, trialDays, trialGrams, USUAL_OFFERS } from '../../../care/trials/plan.ts';
import type { Animal, Household } from '../../../household/model.ts';
import { foodStanding } from '../../../household/reckon/care/food-standing.ts';
import { lastWeighing } from '../../../household/reckon/care/records-of.ts';
import { alike } from '../../../household/reckon/foods/alike.ts';
import { handledOf } from '../../../household/reckon/foods/handled.ts';
import { mixesOf } from '../../../household/reckon/mix/refusals.ts';
import { words } from '../../../words/words.ts';
import { CautionWords } from '../../shared/CautionWords.tsx';
import { Choice } from '../../shared/Choice.tsx';
import { DayInput } from '../../shared/DayInput.tsx';
import { FoodHands } from '../../shared/hands/FoodHands.tsx';
import { NumberInput } from '../../shared/NumberInput.tsx';
import { today } from '../../shared/today.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { newId } from '../../store/new-id.ts';
import type { Advised } from './food-choices.ts';
import { standingWord } from './standing-word.ts';

interface Props {
  animal: Animal;
  food: { readonly id: string; readonly name: string };
  advice: Advised;
  onBegin(trial: Trial): void;
  onOther(): void;
  onLeave(): void;
}

export function PlanTrial({ animal, food, advice, onBegin, onOther, onLeave }: Props) {
  const { trials, figures: f } = words();
  const t = trials.plan;
  const { house } = useMixDraft();
  const body = bodyOf(house, animal);
  const [grams, setGrams] = useState(() => (body === undefined ? undefined : trialGrams(body)));
  const [offers, setOffers] = useState<number>(USUAL_OFFERS);
  const [from, setFrom] = useState<string | undefined>(today);
  const known = knownFoods(house, animal, food.id);
  const [beside, setBeside] = useState(known[0]?.food ?? '');
  const [tried, setTried] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  const standing = standingWord(foodStanding(house, animal, { id: food.id, name: food.name }));

  function begin(event: FormEvent) {
    event.preventDefault();
    setTried(true);
    if (from === undefined || advice.never) return;
    const there = known.find((k) => k.food === beside);
    onBegin({
      id: newId(),
      animalId: animal.id,
      food: food.id,
      name: food.name,
      ...(there && { beside: { food: there.food, name: there.name } }),
      ...(grams !== undefined && { grams }),
      days: trialDays(from, offers),
      offerings: [],
    });
  }

  return (
    <Form className="trial-card plan-trial" onSubmit={begin} aria-label={t.heading(food.name)}>
      <h3 ref={heading} tabIndex={-1}>
        {t.heading(food.name)} {standing && <span className="tag">{standing}</span>}
      </h3>
      {advice.never && <p role="alert">{trials.choose.neverFound(food.name)}</p>}
      {advice.cautions.length > 0 && (
        <section aria-label={t.cautions} className="banner">
          <h4>{t.cautions}</h4>
          {advice.cautions.map((caution) => (
            <CautionWords key={caution.id} caution={caution} />
          ))}
        </section>
      )}
      <FoodHands full food={handledOf(house, food)} />
      {!advice.never && (
        <>
          <div className="fields">
            <NumberInput
              label={t.amount}
              measure="mass"
              min={0.01}
              step={0.1}
              value={grams}
              onCommit={setGrams}
              hint={body === undefined ? t.amountUnknown : t.amountHint(PER_100_GRAMS, body)}
            />
            <Choice
              label={t.offers}
              value={String(offers)}
              options={OFFERS.map((n) => [String(n), t.times(n)] as const)}
              onChange={(n) => setOffers(Number(n))}
            />
            <DayInput
              label={t.from}
              value={from}
              onChange={setFrom}
              {...(tried && from === undefined && { error: t.noDay })}
            />
            <Choice
              label={t.beside}
              value={beside}
              options={[...known.map((k) => [k.food, k.name] as const), ['', t.noBeside] as const]}
              onChange={setBeside}
            />
          </div>
          {from !== undefined && <p>{t.days(trialDays(from, offers).map((d) => f.shortDay(d)))}</p>}
          <p className="hint">{t.apart}</p>
        </>
      )}
      <div className="button-row">
        {!advice.never && (
          <Button type="submit" className="button">
            {t.begin}
          </Button>
        )}
        <Button className="quiet-button" onPress={onOther}>
          {t.other}
        </Button>
        <Button className="quiet-button" onPress={onLeave}>
          {trials.choose.cancel}
        </Button>
      </div>
    </Form>
  );
}

/** g that it weighs: as weighed last, as it is in health, or the middle of its kind; undefined where nobody knows. */
function bodyOf(house: Household, animal: Animal): number | undefined {
  const last = lastWeighing(house, animal.id);
  const kind = ADULT_WEIGHTS[speciesKind(animal.species)];
  const middle = kind && animal.lifeStage !== 'growing' ? (kind.low + kind.high) / 2 : undefined;
  return last?.grams ?? animal.usualGrams ?? middle;
}

/**
 * Foods of which one lies beside the new one: what is fed beside its mixes, then what of its mixes it knows, then what the
 * keeper says it knows.
 */
function knownFoods(
  house: Household,
  animal: Animal,
  but: string,
): { readonly food: string; readonly name: string }[] {
  const mixes = mixesOf(house.mixes, animal.id);
  const beside = mixes.flatMap((m) => m.problem.beside);
  const said = (animal.knows ?? []).map((id) => alike(house).known({ id }));
  const all = [...beside, ...mixes.flatMap((m) => m.problem.foods), ...said];
  const fits = all.filter((food) => {
    if (food.id === but || food.ref === but || food.name === undefined) return false;
    const { is } = foodStanding(house, animal, food);
    return is === 'liked' || is === 'known' || (is === 'untried' && beside.some((b) => b.id === food.id));
  });
  return [...new Map(fits.map((f) => [f.name, { food: f.id, name: f.name ?? f.id }])).values()];
}
