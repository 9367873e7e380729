/** The mixes an animal is fed: ticked here, or at the mix itself. */
import { useState } from 'react';
import type { Animal, Mix } from '../../../household/model.ts';
import { words } from '../../../words/words.ts';
import { Failed } from '../../shared/Failed.tsx';
import { useParts } from '../../shared/parts.tsx';
import { useSave } from '../../store/household.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import '../../shared/styles/ticks.css';

/** Mixes shown at once. */
const PART = 30;

export function AnimalMixes({ animal }: { animal: Animal }) {
  const { house, mix: atHand, change } = useMixDraft();
  const save = useSave('mixes');
  const t = words().animals.mixes;
  /** Those it was fed when this was opened: they stay where they are when one is unticked. */
  const [fed] = useState(
    () => new Set(house.mixes.flatMap((m) => (m.animalIds.includes(animal.id) ? m.id : []))),
  );
  const long = house.mixes.length > PART;
  const mixes = long
    ? [...house.mixes.filter((m) => fed.has(m.id)), ...house.mixes.filter((m) => !fed.has(m.id))]
    : house.mixes;
  const parts = useParts(mixes, { part: PART });

  function feed(mix: Mix, fed: boolean) {
    const next = (m: Mix): Mix => ({
      ...m,
      animalIds: [...m.animalIds.filter((id) => id !== animal.id), ...(fed ? [animal.id] : [])],
    });
    // The mix at hand may have changes on their way to the server; they and this are saved as one.
    if (mix.id === atHand?.id) change(next);
    else save.mutate({ ...next(mix), updatedAt: new Date().toISOString() }, mix);
  }

  return (
    <section aria-label={t.section}>
      <h3>{t.title}</h3>
      {house.mixes.length === 0 && <p className="empty">{t.none}</p>}
      <ul className="ticks">
        {parts.shown.map((m) => (
          <li key={m.id}>
            <label className="tick">
              <input
                type="checkbox"
                checked={m.animalIds.includes(animal.id)}
                onChange={(e) => feed(m, e.target.checked)}
              />
              <span>{m.name}</span>
            </label>
          </li>
        ))}
      </ul>
      {parts.more}
      <Failed error={save.error} />
    </section>
  );
}
