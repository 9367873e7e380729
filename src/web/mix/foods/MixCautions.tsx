/** What the caution list says of one food of the mix, and the keeper's recorded choice where it is a limit. */
import { useState } from 'react';
import { Button, Input, Label, TextField } from 'react-aria-components';
import type { Ingredient } from '../../../formulation/problem/problem.ts';
import type { CautionNote } from '../../../formulation/problem/result.ts';
import { patchFood } from '../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../words/words.ts';
import { CautionWords } from '../../shared/CautionWords.tsx';
import { today } from '../../shared/today.ts';
import type { FormulationView } from '../useFormulation.ts';
import '../../shared/styles/cautions.css';
import './MixCautions.css';

export function MixCautions({
  food,
  notes,
  view,
}: {
  food: Ingredient;
  notes: readonly CautionNote[];
  view: FormulationView;
}) {
  const t = words().rows.cautions;
  const { day } = words().figures;
  if (notes.length === 0) return null;
  return (
    <ul className="cautions" aria-label={t.all}>
      {notes.map((note) => (
        <li key={note.caution} className={`caution-card ${note.severity}`}>
          <CautionWords caution={{ ...note, maxShare: note.max_share }} />
          {note.applied === 'capped' && <Allow food={food} note={note} view={view} />}
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

/** Lifting a limit takes a reason, which is kept with the mix. */
function Allow({ food, note, view }: { food: Ingredient; note: CautionNote; view: FormulationView }) {
  const t = words().rows.cautions;
  const [why, setWhy] = useState<string>();
  if (why === undefined)
    return (
      <Button className="quiet-button" onPress={() => setWhy('')}>
        {t.goAhead(note.max_share ?? 0)}
      </Button>
    );
  const empty = why.trim() === '';
  return (
    <form
      className="allow"
      onSubmit={(e) => {
        e.preventDefault();
        if (empty) return;
        const override = { caution: note.caution, note: why.trim(), on: today() };
        void view.edit((m) => patchFood(m, food.id, { override }));
      }}
    >
      <TextField value={why} onChange={setWhy} autoFocus>
        <Label>{t.why}</Label>
        <Input />
      </TextField>
      <div className="button-row">
        <Button type="submit" className="button" isDisabled={empty}>
          {t.allowMore}
        </Button>
        <Button className="quiet-button" onPress={() => setWhy(undefined)}>
          {t.leaveLimit}
        </Button>
      </div>
    </form>
  );
}
