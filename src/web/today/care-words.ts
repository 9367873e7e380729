/** What is due of animals and batches, in words. */
import { capital } from '../../formulation/explain/sentences.ts';
import type { AnimalDue, CareDue } from '../../household/reckon/care/due.ts';
import type { BeingFed } from '../../household/reckon/care/present-batches.ts';
import type { TrialDue } from '../../household/reckon/care/trial-due.ts';
import { sayBarred } from '../../kitchen/cupboard/barred.ts';
import type { Day } from '../../kitchen/model.ts';
import { words } from '../../words/words.ts';
import { dayAt } from '../shared/today.ts';
import type { Errand } from './errand.ts';

/** "batch 3" while one is fed; where there are several, the mix and the day. */
export function batchWords({ present }: BeingFed, { fed, severalMixes }: CareDue, today: Day): string {
  if (fed.length < 2 && !severalMixes) return present.name;
  const { today: t, figures: f } = words();
  const { name, startedAt } = present.batch;
  return t.batchOf(name, f.day(dayAt(startedAt), today));
}

/** Packs not to be used any more, alarms of weights, and batches that run out; with how pressing each is. */
export function careErrands(care: CareDue, today: Day): Errand[] {
  return [
    ...barred(care),
    ...barredPacks(care),
    ...upset(care, today),
    ...maybeBarred(care, today),
    ...weights(care, today),
    ...runningOut(care, today),
    ...packsRunningOut(care, today),
    ...changing(care, today),
  ];
}

function barred({ barred: all }: CareDue): Errand[] {
  const { today: t, figures: f } = words();
  return all.map(({ lot, barred: stop, batches }) => ({
    key: `barred ${lot.id}`,
    rank: 'danger',
    words: t.notToUse(
      lot.name,
      sayBarred(stop.why),
      batches.map((b) => t.batchOf(b.name, f.day(dayAt(b.startedAt), stop.on))),
    ),
    link: t.links.reached,
    to: ['cupboard', lot.id],
    warns: true,
  }));
}

function barredPacks({ barredPacks: all }: CareDue): Errand[] {
  const t = words().today;
  return all.map(({ pack, animals }) => ({
    key: `barred ${pack.lot.id}`,
    rank: 'danger',
    words: t.barredPack(
      pack.lot.name,
      sayBarred(pack.barred.why),
      animals.map((a) => a.name),
    ),
    link: t.links.reached,
    to: ['cupboard', pack.lot.id],
    warns: true,
  }));
}

function upset(care: CareDue, today: Day): Errand[] {
  const t = words().today.upset;
  return care.upset.map(({ fed, food }) => ({
    key: `upset ${fed.present.batch.id} ${food.food} ${food.animal.id}`,
    rank: food.own ? 'danger' : 'overdue',
    words: (food.own ? t.own : t.other)(food.name, food.animal.name, batchWords(fed, care, today)),
    link: t.link,
    to: ['animals', food.animal.id, 'trials'],
    warns: true,
  }));
}

function maybeBarred(care: CareDue, today: Day): Errand[] {
  const t = words().today;
  return care.maybeBarred.map((fed) => ({
    key: `maybe ${fed.present.batch.id}`,
    rank: 'overdue',
    words: t.maybeBarred(capital(batchWords(fed, care, today))),
    link: t.links.record,
    to: ['weigh', fed.present.batch.id],
    warns: true,
  }));
}

/** The most pressing alarm of each animal. */
function weights({ animals }: CareDue, today: Day): Errand[] {
  const { today: t, figures: f } = words();
  return animals.flatMap(({ animal, alerts: [alert] }): Errand[] => {
    if (!alert) return [];
    const { rule, way, percent, since, from, to, vet } = alert;
    const what =
      rule === 'growth' && way === 'loss'
        ? t.weight.behind(animal.name, to)
        : (way === 'loss' ? t.weight.lost : t.weight.gained)(
            animal.name,
            percent,
            f.day(since, today),
            from,
            to,
          );
    return [
      {
        key: `weight ${animal.id}`,
        rank: ({ today: 'danger', days: 'overdue', 'next visit': 'later' } as const)[vet],
        words: `${what} ${t.weight.vet[vet]}`,
        link: t.weight.link,
        to: ['animals', animal.id, 'weight'],
        ...(vet !== 'next visit' && { warns: true }),
      },
    ];
  });
}

function runningOut(care: CareDue, today: Day): Errand[] {
  const { today: t, figures: f } = words();
  return care.runningOut.map(({ fed, day }) => {
    const name = capital(batchWords(fed, care, today));
    const say = day === today ? t.runsOutToday : day < today ? t.ranOut : t.runsOut;
    return {
      key: `runs-out ${fed.present.batch.id}`,
      rank: day <= today ? 'overdue' : 'later',
      words: say(name, f.day(day, today)),
      link: t.planNext,
      to: ['calendar'],
      ...(fed.mix && { mix: fed.mix.id }),
    };
  });
}

function packsRunningOut(care: CareDue, today: Day): Errand[] {
  const { today: t, figures: f } = words();
  return care.packsRunningOut.map(({ name, day }) => ({
    key: `pack ${name}`,
    rank: day <= today ? 'overdue' : 'later',
    words: (day <= today ? t.runsOutToday : t.runsOut)(name, f.day(day, today)),
    link: t.buyPack,
    to: ['shopping'],
  }));
}

/** Changes of food, for as many days as the calendar gives them. */
function changing(care: CareDue, today: Day): Errand[] {
  const t = words().today;
  return care.changing.map(({ fed, day, of }) => ({
    key: `change ${fed.present.batch.id}`,
    rank: 'later',
    words: t.changing(batchWords(fed, care, today), day, of),
    link: t.links.eachDay,
    to: ['mix', 'change'],
    ...(fed.mix && { mix: fed.mix.id }),
  }));
}

/**
 * "6 g mix", "6 g pellet": what one animal is fed today, or was.
 * @param pellets ids of the keeper's pellets: where one alone is fed beside the mix, it needs no name
 */
export function mealParts({ meal, feeding }: AnimalDue, pellets: ReadonlySet<string>): string[] {
  const t = words().today.care;
  const nameOf = (food: string) => meal?.beside.find((b) => b.food === food)?.name ?? food;
  const fed = feeding?.at === undefined ? undefined : feeding;
  const mix = fed ? fed.mix?.grams : meal?.mix?.grams;
  const old = fed ? undefined : meal?.old?.grams;
  const beside = fed ? fed.beside : (meal?.beside ?? []);
  return [
    ...(mix === undefined ? [] : [(old === undefined ? t.ofMix : t.ofNew)(mix)]),
    ...(old === undefined ? [] : [t.ofOld(old)]),
    ...beside.flatMap(({ food, grams }) => {
      if (grams === undefined) return [];
      return [beside.length === 1 && pellets.has(food) ? t.ofPellet(grams) : t.ofFood(grams, nameOf(food))];
    }),
  ];
}

export function weighWords({ weigh }: AnimalDue, today: Day): string {
  const { today: t, figures: f } = words();
  const { why, every, last } = weigh;
  const again =
    last === undefined || weigh.is === 'offer' ? t.care.weighFirst : t.care.weighAgain(f.day(last, today));
  if (why === 'weekly') return again;
  const { weighWhy } = t.care;
  return `${again} ${why === 'alert' ? weighWhy.alert : weighWhy[why](every)}`;
}

export function trialWords({ trial, day }: TrialDue, today: Day): string {
  const { today: t, figures: f } = words();
  const { grams, name, beside } = trial;
  const offer =
    grams === undefined
      ? beside
        ? t.care.offerBeside(name, beside.name)
        : t.care.offer(name)
      : beside
        ? t.care.offerGramsBeside(grams, name, beside.name)
        : t.care.offerGrams(grams, name);
  return day < today ? `${offer} ${t.care.planned(f.day(day, today))}` : offer;
}
