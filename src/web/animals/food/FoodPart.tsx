/** What it is fed a day, how much that may be, today's portions, and how long the food lasts. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { conditionsNow } from '../../../care/animal/conditions.ts';
import { speciesKind } from '../../../care/animal/species.ts';
import { type DailyAmount, dailyAmount, standingOf } from '../../../care/feeding/daily-amount.ts';
import type { RationEnergy } from '../../../care/feeding/ration-energy.ts';
import { ENERGY_PER_KG, WHEEL } from '../../../care/figures/feeding.ts';
import type { Animal } from '../../../household/model.ts';
import { dailyMeal } from '../../../household/reckon/care/daily-meal.ts';
import { supplyOf } from '../../../household/reckon/care/supply-of.ts';
import { weightsOf } from '../../../household/reckon/care/weight-of.ts';
import { dayInWords, daysBetween } from '../../../kitchen/days.ts';
import { nutrient } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
import { Failed } from '../../shared/Failed.tsx';
import { focusWhenThere } from '../../shared/focus.ts';
import { useCircumstances } from '../../shared/hooks/useCircumstances.ts';
import { linkTo } from '../../shared/route.ts';
import { dayAt, today } from '../../shared/today.ts';
import { Sentence } from '../../shared/words/Sentence.tsx';
import { useSave } from '../../store/household.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { AmountPicture } from './AmountPicture.tsx';
import { SupplyLines } from './SupplyLines.tsx';
import { TodaysPortions } from './TodaysPortions.tsx';
import { useRationEnergy } from './useRationEnergy.ts';
import { amountRows, raiseWords } from './view-model.ts';
import './food.css';

/** A body weight older than that is asked for anew, days (our own choice, no source). */
const OLD_DAYS = 30;

export function FoodPart({ animal }: { animal: Animal }) {
  const { house } = useMixDraft();
  const t = words().dailyFood;
  const under = useCircumstances();
  const meal = under && dailyMeal(house, animal, under);
  const supply = under && supplyOf(house, animal, under);
  const { energy, working } = useRationEnergy(animal, meal);
  const story = weightsOf(house, animal, { today: today(), dayAt });
  const last = story.trend.at(-1);
  const weight = last?.grams ?? animal.usualGrams;
  const isOld = last !== undefined && daysBetween(last.day, today()) > OLD_DAYS;
  const amount = dailyAmount({
    kind: speciesKind(animal.species),
    lifeStage: animal.lifeStage,
    conditions: animal.conditions ?? [],
    ...(weight !== undefined && { weight }),
    ...(energy && { energy }),
    ...(animal.wheel !== undefined && { wheel: animal.wheel }),
    ...(animal.room !== undefined && { room: animal.room }),
  });
  const raises = raiseWords(amount, animal.room);
  const losing = story.alerts.find((a) => a.way === 'loss');
  const standing = animal.dailyGrams === undefined ? undefined : standingOf(animal.dailyGrams, amount);
  const isStage = amount.stage !== 'grown' && amount.stage !== 'old';
  return (
    <div className="food-part">
      <section aria-label={t.title}>
        <h3>{t.title}</h3>
        <Fed animal={animal} rows={amountRows(amount, weight, animal.dailyGrams)} />
        {standing === 'under' && losing && (
          <p className="notice-line" role="alert">
            {t.falling[losing.vet](animal.name)}
          </p>
        )}
        {standing === 'under' && !losing && <p>{t.standing.under(animal.name)}</p>}
        {(standing === 'within' || standing === 'over') && <p>{t.standing[standing]}</p>}
        {isStage && <p>{t.stage[amount.stage as keyof typeof t.stage]}</p>}
        {isOld && <p className="hint">{t.weighAgain(dayInWords(last.day))}</p>}
        {conditionsNow(animal).length > 0 && <p className="hint">{t.vetFirst}</p>}
        {working || !under ? (
          <p role="status" className="hint">
            {t.missing.working}
          </p>
        ) : (
          <Missing animal={animal} amount={amount} energy={energy} />
        )}
        {raises.length > 0 && (
          <>
            <h4>{t.raises.title}</h4>
            <ul className="plain-list">
              {raises.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ul>
          </>
        )}
        <Why amount={amount} energy={energy} />
      </section>
      <section aria-label={t.portions.title}>
        <h3>{t.portions.title}</h3>
        {under && <TodaysPortions animal={animal} meal={meal} />}
      </section>
      <section aria-label={t.lasts.title}>
        <h3>{t.lasts.title}</h3>
        {under && <SupplyLines supply={supply} under={under} />}
      </section>
      <section aria-label={t.cautions.title}>
        <h3>{t.cautions.title}</h3>
        <ul className="plain-list">
          <li>{t.cautions.water}</li>
          <li>{t.cautions.slowly}</li>
          <li>{t.cautions.bowl}</li>
          <li>{t.cautions.weigh}</li>
        </ul>
      </section>
    </div>
  );
}

/** What it is fed now, and the figures that may be taken instead with one press. */
function Fed({ animal, rows }: { animal: Animal; rows: ReturnType<typeof amountRows> }) {
  const t = words().dailyFood;
  const save = useSave('animals');
  /** What it was fed before a figure was taken here. */
  const [before, setBefore] = useState<{ readonly grams: number | undefined }>();
  const { dailyGrams } = animal;

  function take(grams: number | undefined, from?: { readonly grams: number | undefined }) {
    const { dailyGrams: _, ...rest } = animal;
    save.mutate(grams === undefined ? rest : { ...rest, dailyGrams: grams }, animal);
    setBefore(from);
    focusWhenThere('.fed-now');
  }

  return (
    <>
      <p className="fed-now" tabIndex={-1} aria-live="polite">
        {dailyGrams === undefined
          ? t.nobodySaid(animal.name)
          : before
            ? t.taken(animal.name, dailyGrams)
            : t.fed(animal.name, dailyGrams)}{' '}
        {before && (
          <Button className="quiet-button" onPress={() => take(before.grams)}>
            {before.grams === undefined ? t.backToNone : t.back(before.grams)}
          </Button>
        )}
      </p>
      {before?.grams !== undefined && dailyGrams !== undefined && dailyGrams < before.grams && (
        <p className="notice-line">{t.takenLess}</p>
      )}
      <Failed error={save.error} />
      <AmountPicture
        rows={rows}
        fed={dailyGrams}
        onTake={(grams) => take(grams, before ?? { grams: dailyGrams })}
      />
    </>
  );
}

/** What the range by energy lacks. */
function Missing({
  animal,
  amount,
  energy,
}: {
  animal: Animal;
  amount: DailyAmount;
  energy: RationEnergy | undefined;
}) {
  const t = words().dailyFood.missing;
  if (amount.missing.length === 0) return null;
  return (
    <div className="amount-missing">
      <h4>{t.title}</h4>
      <ul className="plain-list">
        {amount.missing.includes('weight') && (
          <li>
            <Sentence
              of={t.weight(animal.name)}
              with={{ weigh: (text) => <a href={linkTo('animals', animal.id, 'weight')}>{text}</a> }}
            />
          </li>
        )}
        {amount.missing.includes('energy') && (
          <li>
            {energy && energy.missing.length > 0
              ? t.parts(energy.missing.map((tag) => nutrient(tag).name))
              : t.noFood}
          </li>
        )}
      </ul>
    </div>
  );
}

/** How the range comes about, and every source. */
function Why({ amount, energy }: { amount: DailyAmount; energy: RationEnergy | undefined }) {
  const t = words().dailyFood.why;
  const { equation, intake, raises } = amount;
  const sources = [
    ...new Set([
      ...(equation?.sources ?? []),
      ...(intake?.sources ?? []),
      ...raises.flatMap((r) => r.sources),
      ...(raises.some((r) => r.what === 'wheel') ? WHEEL.sources : []),
    ]),
  ];
  return (
    <details className="amount-why">
      <summary>{t.title}</summary>
      {equation && energy && (
        <>
          <p>{t.need(equation.energy.low, equation.energy.high, energy.kcal.low, energy.kcal.high)}</p>
          <p>{t.perKg(ENERGY_PER_KG.low, ENERGY_PER_KG.high)}</p>
          <p>{t.atwater}</p>
        </>
      )}
      <p>{t.start}</p>
      {sources.length > 0 && (
        <>
          <h4>{t.sources}</h4>
          <ul className="plain-list">
            {sources.map((source) => (
              <li key={source} className="source" lang="en">
                {source}
              </li>
            ))}
          </ul>
        </>
      )}
    </details>
  );
}
