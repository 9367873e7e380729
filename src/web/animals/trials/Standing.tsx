/** What the trials of one food say: the verdict in words, how sure it is, its picture, and what follows for mixes. */
import type { Animal } from '../../../household/model.ts';
import { refusedBy, rulesOn } from '../../../household/reckon/care/out-foods.ts';
import type { TriedFood } from '../../../household/reckon/care/trials-of.ts';
import { mixesOf } from '../../../household/reckon/mix/refusals.ts';
import { words } from '../../../words/words.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { SpanPicture } from './SpanPicture.tsx';
import { sureWords, verdictWords } from './verdict-words.ts';

export function Standing({ animal, food }: { animal: Animal; food: TriedFood }) {
  const { house } = useMixDraft();
  const t = words().trials;
  const { judged } = food;
  const { evidence } = judged.verdict;
  const rules = rulesOn(refusedBy(house, animal), food.food);
  const listed = rules.some((r) => r.why === 'list');
  const out = mixesOf(house.mixes, animal.id).filter((m) =>
    m.problem.foods.some((f) => rulesOn(rules, f).length > 0),
  );
  return (
    <div className={`standing ${judged.is}`}>
      <p className="standing-said">
        <strong>{verdictWords(animal.name, food)}</strong>{' '}
        {judged.is === 'refused'
          ? t.follows.refused(out.map((m) => m.name))
          : judged.is === 'upset'
            ? ''
            : t.follows[judged.is]}
      </p>
      {listed && <p>{t.follows.listed}</p>}
      {sureWords(judged.verdict).map((sentence) => (
        <p key={sentence}>{sentence}</p>
      ))}
      {evidence.eaten + evidence.left + evidence.unknown > 0 && <SpanPicture verdict={judged.verdict} />}
      <details>
        <summary>{t.verdict.how}</summary>
        <p className="hint">{t.verdict.why}</p>
        {judged.trials.length > 1 && <p className="hint">{t.verdict.older}</p>}
      </details>
    </div>
  );
}
