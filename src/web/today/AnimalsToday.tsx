/** One line an animal: ticked off as fed, and the ways to its weight and its left-overs. */
import { useState } from 'react';
import type { AnimalDue } from '../../household/reckon/care/due.ts';
import { ticked } from '../../household/reckon/care/tick-feeding.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { useParts } from '../shared/parts.tsx';
import { Button } from '../shared/plain/Button.tsx';
import { useSave } from '../store/household.ts';
import { AnimalLine } from './AnimalLine.tsx';
import { useNotToday } from './not-today.ts';
import type { AskDue } from './useCareDue.ts';
import './animals-today.css';

export function AnimalsToday({ care, day }: { care: AskDue; day: Day }) {
  const animals = care()?.animals ?? [];
  const notToday = useNotToday(day);
  const save = useSave('feedings');
  const [said, setSaid] = useState('');
  const parts = useParts(animals, { part: 20 });
  if (animals.length === 0) return null;
  const t = words().today.care;
  const open = animals.filter((a) => a.feed === 'due' || a.feed === 'offer');
  const left = animals.flatMap((a) => (a.left === 'due' ? [a.animal.name] : []));
  const due = animals.some((a) => isDue(a, notToday.isOff));

  function feed(fed: readonly AnimalDue[]) {
    const at = new Date().toISOString();
    for (const { animal, meal, feeding } of fed)
      if (meal) save.mutate(ticked(animal.id, meal, { on: day, at, kept: feeding }), feeding);
  }

  return (
    <section className="today-animals" aria-label={t.title}>
      <h2 tabIndex={-1}>{t.title}</h2>
      {!due && <p className="hint">{t.nothing}</p>}
      {left.length > 0 && <p>{t.lookLeft(left)}</p>}
      <ul>
        {parts.shown.map((one) => (
          <AnimalLine
            key={one.animal.id}
            due={one}
            day={day}
            notToday={notToday}
            onFeed={() => {
              feed([one]);
              setSaid(t.ticked(one.animal.name));
            }}
          />
        ))}
      </ul>
      {parts.more}
      {open.length > 1 && (
        <Button
          className="button"
          onPress={() => {
            feed(open);
            setSaid(t.tickedAll(open.length));
          }}
        >
          {t.feedAll(open.length)}
        </Button>
      )}
      <p aria-live="polite" className={save.error ? 'field-error' : 'sr-only'}>
        {save.error ? save.error.message : said}
      </p>
    </section>
  );
}

/** What is put off, and what is only offered, is not due. */
function isDue(
  { animal, feed, inDoubt, weigh, left, trials }: AnimalDue,
  isOff: (key: string) => boolean,
): boolean {
  return (
    feed === 'due' ||
    feed === 'stop' ||
    left === 'due' ||
    inDoubt === true ||
    trials.length > 0 ||
    (weigh.is === 'due' && !isOff(`weigh ${animal.id}`))
  );
}
