/** What an animal is in, and what a vet said of it: what holds now, with what follows from it, and what is over. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { conditionsNow } from '../../../care/animal/conditions.ts';
import type { Condition } from '../../../care/model.ts';
import type { Animal } from '../../../household/model.ts';
import { LIFE_STAGES } from '../../../targets/life-stage.ts';
import { words } from '../../../words/words.ts';
import { Failed } from '../../shared/Failed.tsx';
import { focusWhenThere } from '../../shared/focus.ts';
import { today } from '../../shared/today.ts';
import { useSave } from '../../store/household.ts';
import { ConditionForm } from './ConditionForm.tsx';
import './conditions.css';

export function AnimalConditions({ animal }: { animal: Animal }) {
  const { animals, common } = words();
  const t = animals.conditions;
  const save = useSave('animals');
  const [adding, setAdding] = useState(false);
  const [said, setSaid] = useState('');
  /** As the record stood before something was removed from it. */
  const [before, setBefore] = useState<readonly Condition[]>();
  const all = animal.conditions ?? [];
  const now = conditionsNow(animal);
  const earlier = all.filter((c) => !now.includes(c));
  const breeds = now.some((c) => c.what === 'pregnant' || c.what === 'nursing');

  function keep(conditions: readonly Condition[], words: string) {
    save.mutate({ ...animal, conditions }, animal);
    setSaid(words);
    focusWhenThere('.conditions h3');
  }

  function end(condition: Condition) {
    setBefore(undefined);
    const until = today();
    keep(
      all.map((c) => (c === condition ? { ...c, until } : c)),
      t.isOver(t.names[condition.what]),
    );
  }

  function strike(condition: Condition) {
    setBefore(all);
    keep(
      all.filter((c) => c !== condition),
      t.struck(t.names[condition.what]),
    );
  }

  return (
    <section className="conditions" aria-label={t.title}>
      <h3 tabIndex={-1}>{t.title}</h3>
      {now.length === 0 && !adding && <p className="empty">{t.none}</p>}
      <ul className="condition-list">
        {now.map((c) => (
          <li key={keyOf(c)}>
            <p>
              <strong>{t.names[c.what]}</strong> <small>{detailsOf(c)}</small>
            </p>
            {c.note !== undefined && <p>{c.note}</p>}
            {c.what !== 'other' && <p className="hint">{t.follows[c.what]}</p>}
            <div className="button-row">
              <Button className="quiet-button" aria-label={t.overOf(t.names[c.what])} onPress={() => end(c)}>
                {t.over}
              </Button>
              <Button
                className="quiet-button"
                aria-label={t.strikeOf(t.names[c.what])}
                onPress={() => strike(c)}
              >
                {t.strike}
              </Button>
            </div>
          </li>
        ))}
      </ul>
      {breeds && animal.lifeStage !== 'breeding' && (
        <Button
          className="button small"
          onPress={() => {
            save.mutate({ ...animal, lifeStage: 'breeding' }, animal);
            setSaid(t.stageIs(LIFE_STAGES.breeding));
            focusWhenThere('.conditions h3');
          }}
        >
          {t.stage(LIFE_STAGES.breeding)}
        </Button>
      )}
      <div className="said-line">
        <p className="hint" role="status">
          {said}
        </p>
        {before && (
          <Button
            className="quiet-button"
            onPress={() => {
              setBefore(undefined);
              keep(before, '');
            }}
          >
            {common.undo}
          </Button>
        )}
      </div>
      {adding ? (
        <ConditionForm
          animal={animal}
          onDone={() => {
            setAdding(false);
            setSaid('');
            setBefore(undefined);
            focusWhenThere('.conditions h3');
          }}
        />
      ) : (
        <Button
          className="button small"
          onPress={() => {
            setAdding(true);
            focusWhenThere('.condition-form select');
          }}
        >
          {t.add}
        </Button>
      )}
      {earlier.length > 0 && (
        <details>
          <summary>{t.earlier}</summary>
          <ul className="condition-list">
            {earlier.map((c) => (
              <li key={keyOf(c)}>
                {t.names[c.what]} <small>{detailsOf(c)}</small>
                {c.note !== undefined && <p>{c.note}</p>}
                <Button
                  className="quiet-button"
                  aria-label={t.strikeOf(t.names[c.what])}
                  onPress={() => strike(c)}
                >
                  {t.strike}
                </Button>
              </li>
            ))}
          </ul>
        </details>
      )}
      <Failed error={save.error} />
    </section>
  );
}

const keyOf = (c: Condition) => `${c.what} ${c.since}`;

/** "since 3 March, 6 young, a vet said so". */
function detailsOf({ since, until, young, vet }: Condition): string {
  const t = words().animals.conditions;
  return [
    until === undefined ? t.since(since, today()) : t.from(since, until, today()),
    ...(young === undefined ? [] : [t.young(young)]),
    vet ? t.vet : t.own,
  ].join(', ');
}
