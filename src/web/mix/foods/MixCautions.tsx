/** What the caution list says of one food of the mix, and the keeper's recorded choice where it is a limit. */
import { Button } from 'react-aria-components';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { CautionNote } from '../../../formulation/problem/result.ts';
import { withGoneAhead } from '../../../household/reckon/mix/go-ahead.ts';
import { patchFood } from '../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../words/words.ts';
import { CautionWords } from '../../shared/CautionWords.tsx';
import { today } from '../../shared/today.ts';
import type { MixActs } from '../useFormulation.ts';
import '../../shared/styles/cautions.css';
import { GoAhead } from '../../shared/go-ahead/GoAhead.tsx';
import './MixCautions.css';

export function MixCautions({
  food,
  notes,
  view,
}: {
  food: Ingredient;
  notes: readonly CautionNote[];
  view: Pick<MixActs, 'edit'>;
}) {
  const t = words().rows.cautions;
  const { day } = words().figures;
  if (notes.length === 0) return null;
  return (
    <ul className="cautions" aria-label={t.all}>
      {notes.map((note) => (
        <li key={note.caution} className={`caution-card ${note.severity}`}>
          <CautionWords caution={{ ...note, maxShare: note.max_share }} />
          {note.applied === 'capped' && (
            <GoAhead
              label={t.goAhead(note.max_share ?? 0)}
              why={t.why}
              yes={t.allowMore}
              no={t.leaveLimit}
              act={(why) => void view.edit((m) => withGoneAhead(m, food.id, [note.caution], why, today()))}
            />
          )}
          {note.applied === 'overridden' && food.override && (
            <p className="override">
              {t.allowed(day(food.override.on), food.override.note)}{' '}
              <Button
                className="quiet-button"
                onPress={() => void view.edit((m) => patchFood(m, food.id, { override: undefined }))}
              >
                {t.keepLimit}
              </Button>
            </p>
          )}
        </li>
      ))}
    </ul>
  );
}
