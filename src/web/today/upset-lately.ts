/** An animal that did not do well on a new food lately: look how it is. */

import type { Household } from '../../household/model.ts';
import { isHere } from '../../household/reckon/care/here.ts';
import { daysBetween } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import type { Errand } from './errand.ts';

/** Days for which one is asked to look how the animal is: milder signs may last until the next day. */
const LOOK = 2;

export function upsetLately(
  { animals, trials }: Pick<Household, 'animals' | 'trials'>,
  today: Day,
): Errand[] {
  return trials.flatMap((trial): Errand[] => {
    const animal = animals.find((a) => a.id === trial.animalId);
    const upset = trial.offerings.findLast((o) => o.seen === 'upset');
    if (!animal || !isHere(animal) || !upset) return [];
    const days = daysBetween(upset.on, today);
    if (days < 0 || days > LOOK) return [];
    const t = words().trials.today;
    return [
      {
        key: `upset ${trial.id}`,
        rank: 'danger',
        words: t.look(animal.name, trial.name),
        link: t.trial,
        to: ['animals', animal.id, 'trials'],
        warns: true,
      },
    ];
  });
}
