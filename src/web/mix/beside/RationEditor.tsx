/** The whole ration: what is fed beside the mix, by share or by grams a day, and what is left for the mix. */

import { useId, useState } from 'react';
import type { Beside } from '../../../formulation/problem/problem.ts';
import type { Mix } from '../../../household/model.ts';
import { isHere } from '../../../household/reckon/care/here.ts';
import { bindingOn, rulesOn } from '../../../household/reckon/care/out-foods.ts';
import {
  addBeside,
  besideTotal,
  countedPart,
  gramsOfShare,
  removeBeside,
  shareNow,
} from '../../../household/reckon/mix/beside.ts';
import { compositionOf } from '../../../household/reckon/mix/beside-blend.ts';
import { words } from '../../../words/words.ts';
import { focusWhenThere } from '../../shared/focus.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { useReferenceFoods } from '../../worker/engine.ts';
import type { FormulationView } from '../useFormulation.ts';
import { RationBar } from './RationBar.tsx';
import { RationDay } from './RationDay.tsx';
import { RationPicker } from './RationPicker.tsx';
import { RationRow } from './RationRow.tsx';
import './ration.css';

export function RationEditor({ mix, view }: { mix: Mix; view: FormulationView }) {
  const { house } = useMixDraft();
  const t = words().beside;
  const heading = useId();
  const [notice, say] = useState('');
  const { beside, daily_grams } = mix.problem;
  const known = useReferenceFoods(beside.flatMap((b) => b.ref ?? []));
  const waterOf = (b: Beside) => compositionOf(b, known).WATER;
  const nameOf = (b: Beside) => b.name ?? (b.ref && known.get(b.ref)?.name) ?? b.id;
  const grams = (share: number, part: number) =>
    daily_grams === undefined ? undefined : gramsOfShare(share, daily_grams, part);
  const out = bindingOn(house, mix);
  const mixShare = 100 - besideTotal(mix.problem, view.evaluation);

  return (
    <section className="ration" aria-labelledby={heading}>
      <h3 id={heading}>{t.title}</h3>
      <RationBar
        parts={[
          { id: '', name: t.thisMix, share: mixShare, grams: grams(mixShare, 1) },
          ...beside.map((b) => {
            const share = shareNow(b, view.evaluation);
            return { id: b.id, name: nameOf(b), share, grams: grams(share, countedPart(b, waterOf(b))) };
          }),
        ]}
      />
      <RationDay mix={mix} view={view} animals={house.animals.filter(isHere)} waterOf={waterOf} say={say} />
      <ul className="ration-list">
        {beside.map((b) => (
          <RationRow
            key={b.id}
            food={b}
            name={nameOf(b)}
            invented={house.foods.some((f) => f.id === b.id && f.invented)}
            mix={mix}
            view={view}
            out={rulesOn(out, b)}
            waterOf={waterOf}
            onRemove={() => {
              void view.edit((m) => removeBeside(m, b.id));
              say(t.gone(nameOf(b)));
              focusWhenThere('.ration-add');
            }}
          />
        ))}
      </ul>
      <RationPicker
        mix={mix}
        out={out}
        own={house.foods}
        onAdd={(food) => {
          void view.edit((m) => addBeside(m, food));
          say(t.come(nameOf(food)));
        }}
      />
      <p className="hint ration-notice" aria-live="polite">
        {notice}
      </p>
    </section>
  );
}
