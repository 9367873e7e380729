/** What was written down of the animals of an invented household in ten years: by counting alone, the same each time. */
import { feedingId, SEEN } from '../../src/care/model.ts';
import type { Animal, Household, Mix } from '../../src/household/model.ts';
import { plusDays } from '../../src/kitchen/days.ts';
import type { Batch, Day } from '../../src/kitchen/model.ts';

type Care = Pick<Household, 'weighings' | 'feedings' | 'trials' | 'notes' | 'photos' | 'keeper'>;

/** When an animal is weighed on the days of a week. */
const HOURS = [[20], [8, 20], [20], [20], [8, 20], [20], []] as const;

/** A JPEG of a few grey pixels. */
const GREY =
  '/9j/4AAQSkZJRgABAQEASABIAAD/2wBDAP//////////////////////////////////////////////////////////////////////////////////////wgALCAABAAEBAREA/8QAFBABAAAAAAAAAAAAAAAAAAAAAP/aAAgBAQABPxA=';

/**
 * @param days how many, to the last: each animal is weighed on six days of seven, on two of them twice, and fed on each; left-overs
 * are looked at once a week @param trials @param notes of all animals together
 */
export function careOf(p: {
  readonly animals: readonly Animal[];
  readonly batches: readonly Batch[];
  readonly mix: Mix;
  readonly pellet: string;
  readonly until: Day;
  readonly days: number;
  readonly trials: number;
  readonly notes: number;
}): Care {
  const { animals, until, days } = p;
  const all = Array.from({ length: days }, (_, i) => plusDays(until, i - days));
  const finished = p.batches.filter((b) => b.finishedAt !== undefined);
  const foods = p.mix.problem.foods;
  const fedOn = batchOn(finished);
  return {
    weighings: animals.flatMap((animal, k) =>
      all.flatMap((on, i) =>
        HOURS[(i + k) % 7]!.map((hour) => ({
          id: `weighing-${k}-${i}${hour < 12 ? '-early' : ''}`,
          animalId: animal.id,
          at: `${on}T${hour < 10 ? '0' : ''}${hour}:${10 + k}:00.000Z`,
          grams: 130 + 8 * k + wobble(i * 5 + k + (hour < 12 ? 2 : 0)),
        })),
      ),
    ),
    feedings: animals.flatMap((animal, k) =>
      all.map((on, i) => {
        const batchId = fedOn(on, animal.id);
        const food = foods[(i + k) % foods.length]?.id ?? '';
        return {
          id: feedingId(animal.id, on),
          animalId: animal.id,
          on,
          at: `${on}T19:${String(10 + k)}:00.000Z`,
          mix: { ...(batchId !== undefined && { batchId }), grams: 5 + (k % 3) },
          beside: [{ food: p.pellet, grams: 5 + (k % 3) }],
          ...(i % 7 === 3 && {
            left: { on: plusDays(on, 1), bowl: { grams: 1 + (i % 3), mostly: [food] } },
          }),
        };
      }),
    ),
    trials: Array.from({ length: p.trials }, (_, i) => {
      const food = pick(foods, i);
      const from = plusDays(until, -Math.round((days * (p.trials - i)) / p.trials));
      const on = [0, 1, 3, 5].map((later) => plusDays(from, later));
      return {
        id: `trial-${i}`,
        animalId: pick(animals, i).id,
        food: food.id,
        name: food.name ?? food.id,
        grams: 0.5,
        days: on,
        offerings: on.map((day, n) => ({ on: day, seen: pick(SEEN.slice(0, 4), i + n) })),
        endedOn: plusDays(from, 6),
      };
    }),
    notes: Array.from({ length: p.notes }, (_, i) => ({
      id: `note-${i}`,
      animalId: pick(animals, i).id,
      on: plusDays(until, -Math.round((days * (p.notes - i)) / p.notes)),
      kind: i % 12 === 0 ? ('vet' as const) : ('seen' as const),
      text: `Invented note no. ${i + 1}: lively, coat smooth.`,
    })),
    photos: animals.map(({ id }) => ({ id, jpeg: GREY })),
    keeper: [{ id: 'keeper', vet: { name: 'Invented vet', phone: '0123 456' }, allergies: ['sesame'] }],
  };
}

/** The batch that was finished last before a day, for an animal. */
function batchOn(batches: readonly Batch[]): (on: Day, animal: string) => string | undefined {
  const byAnimal = new Map<string, { readonly day: Day; readonly id: string }[]>();
  for (const b of batches)
    for (const animal of b.animalIds) {
      const list = byAnimal.get(animal) ?? [];
      byAnimal.set(animal, list);
      list.push({ day: (b.finishedAt ?? '').slice(0, 10), id: b.id });
    }
  for (const list of byAnimal.values()) list.sort((a, b) => (a.day < b.day ? -1 : 1));
  return (on, animal) => {
    const list = byAnimal.get(animal) ?? [];
    let [low, high] = [0, list.length];
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((list[middle]?.day ?? '') <= on) low = middle + 1;
      else high = middle;
    }
    return list[low - 1]?.id;
  };
}

/** Whole grams that go up and down, -2 to 2, as a scale with steps of a gram shows them. */
function wobble(i: number): number {
  return Math.round(2 * Math.sin(i * 12.9898) * Math.cos(i * 4.1414));
}

function pick<T>(list: readonly T[], i: number): T {
  const found = list[i % list.length];
  if (found === undefined) throw new Error('nothing to pick from');
  return found;
}
