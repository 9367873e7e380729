/** What an animal refuses by its trials, beside what the keeper wrote down: each with the way to its trial. */
import type { Animal } from '../../../household/model.ts';
import { refusedBy } from '../../../household/reckon/care/out-foods.ts';
import { words } from '../../../words/words.ts';
import { linkTo } from '../../shared/route.ts';
import { Sentence } from '../../shared/words/Sentence.tsx';
import { useMixDraft } from '../../store/mix-draft.tsx';

export function TrialRefusals({ animal }: { animal: Animal }) {
  const t = words().trials.about;
  const { house } = useMixDraft();
  const rules = refusedBy(house, animal);
  return rules.map(({ why, name, trial }) =>
    why === 'list' ? null : (
      <p key={trial}>
        <Sentence
          of={t[why](name)}
          with={{ trial: (text) => <a href={linkTo('animals', animal.id, 'trials')}>{text}</a> }}
        />
      </p>
    ),
  );
}
