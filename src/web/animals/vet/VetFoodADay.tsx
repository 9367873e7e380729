/** What it is fed a day, as planned and as ticked off; what of that it ate; and the foods of its mix by weight. */
import type { VetPage } from '../../../household/reckon/care/vet-page.ts';
import { words } from '../../../words/words.ts';
import { dayAt } from '../../shared/today.ts';
import { clipped } from './clipped.ts';
import type { VetFood } from './useVetFood.ts';

export function VetFoodADay({ food, page }: { food: VetFood; page: VetPage }) {
  const { vetPage: t, figures: f } = words();
  const { meal, contents } = food;
  const { mix, beside = [] } = meal ?? {};
  const made = (at: string) => f.day(dayAt(at), page.today);
  return (
    <section className="vet-food">
      <h4>{t.food.title}</h4>
      {meal ? (
        <ul>
          {mix && (
            <li>
              {mix.grams === undefined
                ? t.food.ofMixUnknown(mix.batch.name, made(mix.batch.startedAt))
                : t.food.ofMix(mix.grams, mix.batch.name, made(mix.batch.startedAt))}
            </li>
          )}
          {beside.map(({ food: id, name, grams }) => (
            <li key={id}>{grams === undefined ? t.food.ofFoodUnknown(name) : t.food.ofFood(grams, name)}</li>
          ))}
        </ul>
      ) : (
        <p>{t.food.none}</p>
      )}
      <p>
        {page.fed ? t.food.fed(page.fed.days, page.fed.of, page.fed.mix, page.fed.beside) : t.food.notTicked}
      </p>
      <p>{t.food.eatenUnknown}</p>
      {contents && (
        <>
          <h4>{t.food.foods}</h4>
          <p className="vet-foods">
            {contents.foods.shown.map(({ name, share }) => t.food.share(clipped(name), share)).join(', ')}
            {contents.foods.more > 0 && ` ${t.more(contents.foods.more)}`}
          </p>
        </>
      )}
    </section>
  );
}
