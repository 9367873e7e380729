/** What it is fed today in portions, and why it should not be fed that, if so. */
import { useState } from 'react';
import { portionsOf } from '../../../care/feeding/portions.ts';
import type { Animal } from '../../../household/model.ts';
import type { DailyMeal } from '../../../household/reckon/care/daily-meal.ts';
import { words } from '../../../words/words.ts';
import { Radios } from '../../shared/Radios.tsx';
import { StopLine } from './StopLine.tsx';

/** Below so many steps of the scale a day's food is weighed too roughly (common practice, no source). */
const COARSE = 10;

const TIMES = ['1', '2', '3'] as const;

export function TodaysPortions({ animal, meal }: { animal: Animal; meal: DailyMeal | undefined }) {
  const t = words().dailyFood.portions;
  const f = words().figures;
  const [times, setTimes] = useState<(typeof TIMES)[number]>('1');
  const mix = meal?.mix;
  if (!meal || !mix) return <p className="empty">{t.none}</p>;
  const step = mix.batch.problem.scale_step_grams;
  const foods = [
    { key: 'mix', name: mix.batch.name, grams: mix.grams },
    ...(meal.old ? [{ key: 'old', name: t.olderBatch(meal.old.batch.name), grams: meal.old.grams }] : []),
    ...meal.beside.map((b) => ({ key: b.food, name: b.name, grams: b.grams })),
  ];
  const known = foods.flatMap((food) => (food.grams === undefined ? [] : [food.grams]));
  const rows = portionsOf(known, Number(times), step);
  /** Its column among those whose grams are known. */
  const column = (key: string) =>
    foods.filter((food) => food.grams !== undefined).findIndex((food) => food.key === key);
  const sum = (values: readonly number[]) => values.reduce((a, b) => a + b, 0);
  return (
    <>
      {meal.stop && <StopLine stop={meal.stop} name={animal.name} />}
      {meal.change && (
        <p>
          {meal.old
            ? t.changing(meal.change.day, meal.change.of)
            : t.changingNoOld(meal.change.day, meal.change.of)}
        </p>
      )}
      {known.length > 0 && meal.stop?.why !== 'recalled' && (
        <>
          <Radios
            className="portion-times"
            label={t.times}
            value={times}
            options={TIMES.map((n) => [n, t.options[n]] as const)}
            onChange={setTimes}
          />
          <table className="portions">
            <thead>
              <tr>
                <td />
                {rows.map((_, i) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a portion is its place in the day
                  <th key={i} scope="col">
                    {rows.length === 1 ? t.portion : t.of(i + 1)}
                  </th>
                ))}
                {rows.length > 1 && <th scope="col">{t.together}</th>}
              </tr>
            </thead>
            <tbody>
              {foods.map((food) => {
                const at = column(food.key);
                return (
                  <tr key={food.key}>
                    <th scope="row">{food.name}</th>
                    {rows.map((row, i) => (
                      // biome-ignore lint/suspicious/noArrayIndexKey: a portion is its place in the day
                      <td key={i}>{at < 0 ? t.unknown : f.grams(row[at] ?? 0)}</td>
                    ))}
                    {rows.length > 1 && (
                      <td>{at < 0 ? t.unknown : f.grams(sum(rows.map((row) => row[at] ?? 0)))}</td>
                    )}
                  </tr>
                );
              })}
              <tr className="portion-sum">
                <th scope="row">{t.together}</th>
                {rows.map((row, i) => (
                  // biome-ignore lint/suspicious/noArrayIndexKey: a portion is its place in the day
                  <td key={i}>{f.grams(sum(row))}</td>
                ))}
                {rows.length > 1 && <td>{f.grams(sum(rows.flat()))}</td>}
              </tr>
            </tbody>
          </table>
          <p className="hint">{t.steps(step)}</p>
          {sum(known) < COARSE * step && <p className="hint">{t.coarse}</p>}
        </>
      )}
      <p className="hint">{t.scatter}</p>
    </>
  );
}
