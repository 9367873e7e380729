/** What it is fed a day, as planned and as ticked off; what of that it ate; and the foods of its mix by weight. */
import type { VetPage } from '../../../household/reckon/care/vet-page.ts';
import { daysBetween } from '../../../kitchen/days.ts';
import { words } from '../../../words/words.ts';
import { dayAt } from '../../shared/today.ts';
import { clipped } from './clipped.ts';
import type { VetFood } from './useVetFood.ts';

export function VetFoodADay({ food, page }: { food: VetFood; page: VetPage }) {
  const { vetPage: t, figures: f } = words();
  const { meal, contents } = food;
  const { mix, old, beside = [], change } = meal ?? {};
  const made = (at: string) => f.day(dayAt(at), page.today);
  return (
    <section className="vet-food">
      <h4>{t.food.title}</h4>
      {meal ? (
        <ul>
          {[mix, old].map(
            (part) =>
              part && (
                <li key={part.batch.id}>
                  {part.grams === undefined
                    ? t.food.ofMixUnknown(part.batch.name, made(part.batch.startedAt))
                    : t.food.ofMix(part.grams, part.batch.name, made(part.batch.startedAt))}
                </li>
              ),
          )}
          {beside.map(({ food: id, name, grams }) => (
            <li key={id}>{grams === undefined ? t.food.ofFoodUnknown(name) : t.food.ofFood(grams, name)}</li>
          ))}
        </ul>
      ) : (
        <p>{t.food.none}</p>
      )}
      {change && <p>{t.food.changing(change.day, change.of)}</p>}
      <p>
        {page.fed ? t.food.fed(page.fed.days, page.fed.of, page.fed.mix, page.fed.beside) : t.food.notTicked}
      </p>
      <p>{eatenWords(food.intake)}</p>
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

/** What it took a night of what was offered, by the left-overs noted; and what of that may lie hidden. */
function eatenWords(intake: VetFood['intake']): string {
  const t = words().vetPage.food;
  if (!intake) return t.eatenUnknown;
  const { grams, hoard, byNight } = intake;
  const nights = byNight.reduce((sum, n) => sum + daysBetween(n.since, n.on) + 1, 0);
  const { low, high } = hoard === 'counted' ? grams.eaten : grams.taken;
  const say = hoard === 'counted' ? t.eaten : t.taken;
  return say(low / nights, high / nights, grams.offered / nights, nights);
}
