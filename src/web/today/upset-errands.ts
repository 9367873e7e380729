/** What trials of new foods make pressing: an animal that did not do well lately, and batches being fed that hold that food. */

import type { Household } from '../../household/model.ts';
import type { CareDue } from '../../household/reckon/care/due.ts';
import { isHere } from '../../household/reckon/care/here.ts';
import { daysBetween } from '../../kitchen/days.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { batchWords } from './care-words.ts';
import type { Errand } from './errand.ts';

/** Days for which one is asked to look how the animal is: milder signs may last until the next day. */
const LOOK = 2;

export function upsetErrands(house: Household, care: CareDue, today: Day): Errand[] {
  return [...lately(house, today), ...held(care, today)];
}

function lately({ animals, trials }: Household, today: Day): Errand[] {
  const t = words().trials.today;
  return trials.flatMap((trial): Errand[] => {
    const animal = animals.find((a) => a.id === trial.animalId);
    const upset = trial.offerings.findLast((o) => o.seen === 'upset');
    if (!animal || !isHere(animal) || !upset) return [];
    const days = daysBetween(upset.on, today);
    if (days < 0 || days > LOOK) return [];
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

function held(care: CareDue, today: Day): Errand[] {
  const t = words().trials.today;
  return care.upset.map(({ fed, food }): Errand => {
    const { batch } = fed.present;
    return {
      key: `upset ${food.trial} ${batch.id} ${food.food}`,
      rank: 'danger',
      words: (food.own ? t.own : t.other)(batchWords(fed, care, today), food.name, food.animal.name),
      link: t.batch,
      to: ['weigh', batch.id],
      warns: true,
    };
  });
}
