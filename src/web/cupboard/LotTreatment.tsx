/** The freeze treatment of one lot: whether it needs it, its steps with a tick, and the keeper's choice to do without. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { type LotGroup, needsTreatment, treatmentDone } from '../../kitchen/freezing/freeze-treatment.ts';
import type { Day, Lot } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { TreatmentOverride } from '../shared/lots/TreatmentOverride.tsx';
import { linkTo } from '../shared/route.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { FreezeSteps } from './FreezeSteps.tsx';

export function LotTreatment({ lot, group, day }: { lot: Lot; group: LotGroup | undefined; day: Day }) {
  const t = words().cupboard.treatment;
  const [asking, setAsking] = useState(false);
  const need = needsTreatment(lot, group);
  const through = treatmentDone(lot, day);
  const open = (lot.cold.length > 0 || need.needs) && !through;
  return (
    <section className="cold-of-lot">
      <h3>{t.title}</h3>
      {lot.cold.length === 0 && <p>{need.why}</p>}
      {lot.cold.length > 0 && <FreezeSteps lot={lot} day={day} />}
      {through && <p>{t.through}</p>}
      {open && lot.cold.length === 0 && !lot.overruled && (
        <p>
          <Sentence
            of={t.advice(words().kitchen.freezeOnePack.sentence, words().kitchen.freezeOnePack.source)}
            with={{ plan: (text) => <a href={linkTo('cupboard', 'cold')}>{text}</a> }}
          />
        </p>
      )}
      {open && !lot.overruled && !asking && (
        <Button
          className="quiet-button ask-overrule"
          onPress={() => {
            setAsking(true);
            focusWhenThere('.asking input');
          }}
        >
          {t.without}
        </Button>
      )}
      {(asking || lot.overruled) && (
        <TreatmentOverride
          lot={lot}
          onClose={(focus) => {
            setAsking(false);
            focusWhenThere(focus);
          }}
        />
      )}
    </section>
  );
}
