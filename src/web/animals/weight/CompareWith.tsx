/** Figures to hold its weight against: its kind's, with the source, and its own. */
import { speciesKind } from '../../../care/animal/species.ts';
import { ADULT_WEIGHTS } from '../../../care/figures/adult-weights.ts';
import type { WeightStory } from '../../../care/weight/model.ts';
import { sourceWords } from '../../../foods/source-words.ts';
import type { Animal } from '../../../household/model.ts';
import { plusDays } from '../../../kitchen/days.ts';
import type { Day } from '../../../kitchen/model.ts';
import { speciesWord } from '../../../targets/life-stage.ts';
import { words } from '../../../words/words.ts';
import { Fact } from '../../shared/Fact.tsx';
import { linkTo } from '../../shared/route.ts';

/** Days that count as lately. */
const LATELY = 90;

export function CompareWith({ animal, story, day }: { animal: Animal; story: WeightStory; day: Day }) {
  const { bodyWeight, figures: f, shared } = words();
  const t = bodyWeight.beside;
  const range = ADULT_WEIGHTS[speciesKind(animal.species)];
  const lately = story.trend.filter((p) => p.day > plusDays(day, -LATELY)).map((p) => Math.round(p.grams));
  return (
    <section aria-label={t.title}>
      <h3>{t.title}</h3>
      <dl className="animal-facts">
        {range && <Fact name={t.kind(speciesWord(animal.species))} words={t.range(range.low, range.high)} />}
        <Fact
          name={t.usual(animal.name)}
          words={animal.usualGrams === undefined ? t.usualNone : f.grams(animal.usualGrams, 1)}
        />
        {lately.length > 0 && (
          <Fact name={t.lately} words={t.latelyRange(Math.min(...lately), Math.max(...lately))} />
        )}
      </dl>
      {animal.usualGrams === undefined && (
        <p>
          <a href={linkTo('animals', animal.id)}>{t.sayUsual}</a>
        </p>
      )}
      <p className="source">{range ? shared.caution.source(sourceWords(range.source)) : t.noKind}</p>
      <p className="hint">{t.own}</p>
    </section>
  );
}
