/** All weighings, the newest first: corrected, deleted with a way back, and those of other days added. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { speciesKind } from '../../../care/animal/species.ts';
import { ADULT_WEIGHTS } from '../../../care/figures/adult-weights.ts';
import type { Weighing } from '../../../care/model.ts';
import type { WeightStory } from '../../../care/weight/model.ts';
import type { Animal } from '../../../household/model.ts';
import { weightsOf } from '../../../household/reckon/care/weight-of.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { focusWhenThere } from '../../shared/focus.ts';
import { useParts } from '../../shared/parts.tsx';
import { dayAt } from '../../shared/today.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { newId } from '../../store/new-id.ts';
import { SaidLine } from '../timeline/SaidLine.tsx';
import { useTold } from '../timeline/useTold.ts';
import { netOf, unlikelyWeight } from './pad-figures.ts';
import { WeighingForm } from './WeighingForm.tsx';
import { momentOf } from './weight-words.ts';

/** Weighings shown at once. */
const PART = 20;
/** The form for one that is not kept yet. */
const NEW = 'new';

export function WeighingList(props: {
  animal: Animal;
  story: WeightStory;
  weighings: readonly Weighing[];
  day: Day;
}) {
  const { animal, story, weighings, day } = props;
  const { house } = useMixDraft();
  const t = words().bodyWeight.list;
  const { said, error, add, change, remove } = useTold('weighings');
  /** The one whose form is open. */
  const [open, setOpen] = useState<string>();
  const newest = [...story.points].reverse();
  const parts = useParts(newest, { part: PART, always: (p) => p.id === open });

  function close() {
    setOpen(undefined);
    focusWhenThere('.weighing-list h3');
  }
  /** By what was known at that time, without the weighing itself. */
  function unlikelyAt(id: string) {
    return (grams: number, at: string) => {
      const before = weightsOf(
        { keeper: house.keeper, weighings: weighings.filter((w) => w.id !== id && w.at < at) },
        animal,
        { today: dayAt(at), dayAt },
      );
      const range = ADULT_WEIGHTS[speciesKind(animal.species)];
      return unlikelyWeight(grams, { story: before, range, lifeStage: animal.lifeStage });
    };
  }

  return (
    <section className="weighing-list" aria-label={t.title}>
      <h3 tabIndex={-1}>{t.title}</h3>
      {open === NEW ? (
        <WeighingForm
          weighing={{
            id: newId(),
            animalId: animal.id,
            ...(animal.tub !== undefined && { tub: animal.tub }),
          }}
          day={day}
          unlikely={unlikelyAt(NEW)}
          onLeave={close}
          onKeep={(weighing) => {
            add(weighing, t.added(weighing.grams));
            close();
          }}
        />
      ) : (
        <Button className="button small" onPress={() => setOpen(NEW)}>
          {t.add}
        </Button>
      )}
      <SaidLine said={said} error={error} />
      {newest.length === 0 && <p className="empty">{t.none}</p>}
      <ul>
        {parts.shown.map((point) => {
          const weighing = weighings.find((w) => w.id === point.id);
          if (!weighing) return null;
          const moment = momentOf(point, day);
          return (
            <li key={point.id}>
              {open === point.id ? (
                <WeighingForm
                  weighing={weighing}
                  day={day}
                  unlikely={unlikelyAt(point.id)}
                  onLeave={close}
                  onKeep={(next) => {
                    change(next, weighing, t.corrected(next.grams));
                    close();
                  }}
                />
              ) : (
                <>
                  <span className="weighing-what">
                    <strong>{t.item(weighing.grams)}</strong> <span>{moment}</span>
                    {point.unlikely && <span className="tag warn">{t.unlikely}</span>}
                    {weighing.sure && <span className="tag">{t.sure}</span>}
                    {weighing.tub !== undefined && (
                      <small>{t.tub(netOf(weighing.grams, -weighing.tub), weighing.tub)}</small>
                    )}
                    {weighing.note && <small>{weighing.note}</small>}
                  </span>
                  <span className="weighing-do">
                    <Button
                      className="quiet-button small"
                      aria-label={t.changeOf(weighing.grams, moment)}
                      onPress={() => setOpen(point.id)}
                    >
                      {t.change}
                    </Button>
                    <Button
                      className="quiet-button small"
                      aria-label={t.deleteOf(weighing.grams, moment)}
                      onPress={() => {
                        remove(weighing, t.deleted(weighing.grams));
                        focusWhenThere('.weighing-list h3');
                      }}
                    >
                      {words().common.delete}
                    </Button>
                  </span>
                </>
              )}
            </li>
          );
        })}
      </ul>
      {parts.more}
    </section>
  );
}
