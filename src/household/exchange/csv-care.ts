/** Tables of the animals and of what was written down of them, for a spreadsheet. One row a record. */
import type { Remains } from '../../care/model.ts';
import type { Household } from '../model.ts';

export type Cell = string | number | undefined;
export type Table = readonly (readonly Cell[])[];

/** @param household in which the record stands */
function namer({ animals }: Pick<Household, 'animals'>): (id: string) => string {
  const names = new Map(animals.map((a) => [a.id, a.name]));
  return (id) => names.get(id) ?? id;
}

export function animalRows({ animals }: Household): Table {
  return [
    [
      'id',
      'name',
      'species',
      'life stage',
      'target',
      'grams a day',
      'refuses',
      'born on',
      'born about',
      'sex',
      'conditions',
      'wheel',
      'room (°C)',
      'daylight',
      'tub (g)',
      'usual weight (g)',
      'knows',
      'notes',
      'gone',
      'gone on',
    ],
    ...animals.map((a) => [
      a.id,
      a.name,
      a.species,
      a.lifeStage,
      a.profileId,
      a.dailyGrams,
      a.refuses.join(', '),
      a.born?.on,
      a.born && (a.born.about ? 'yes' : 'no'),
      a.sex,
      a.conditions
        ?.map(
          (c) =>
            `${c.what} ${c.since} to ${c.until ?? 'now'}${c.vet ? ', a vet said so' : ''}${c.young === undefined ? '' : `, ${c.young} young`}${c.note === undefined ? '' : `: ${c.note}`}`,
        )
        .join('; '),
      yesOrNo(a.wheel),
      a.room,
      yesOrNo(a.daylight),
      a.tub,
      a.usualGrams,
      a.knows?.join(', '),
      a.notes,
      a.gone?.how,
      a.gone?.on,
    ]),
  ];
}

export function weighingRows(household: Household): Table {
  const name = namer(household);
  return [
    ['id', 'animal', 'animal name', 'at', 'grams', 'tub (g)', 'sure', 'note'],
    ...household.weighings.map((w) => [
      w.id,
      w.animalId,
      name(w.animalId),
      w.at,
      w.grams,
      w.tub,
      w.sure ? 'yes' : undefined,
      w.note,
    ]),
  ];
}

export function feedingRows(household: Household): Table {
  const name = namer(household);
  return [
    [
      'id',
      'animal',
      'animal name',
      'on',
      'ticked off at',
      'batch',
      'mix (g)',
      'beside',
      'left looked for on',
      'left since',
      'left in bowl (g)',
      'left in bowl, sorted',
      'found in hoard (g)',
      'found in hoard, sorted',
      'note',
    ],
    ...household.feedings.map((f) => [
      f.id,
      f.animalId,
      name(f.animalId),
      f.on,
      f.at,
      f.mix?.batchId,
      f.mix?.grams,
      f.beside.map((b) => `${b.food}: ${b.grams} g`).join('; '),
      f.left?.on,
      f.left?.since,
      f.left?.bowl?.grams,
      sorted(f.left?.bowl),
      f.left?.hoard?.grams,
      sorted(f.left?.hoard),
      f.left?.note,
    ]),
  ];
}

export function trialRows(household: Household): Table {
  const name = namer(household);
  return [
    [
      'id',
      'animal',
      'animal name',
      'food',
      'food name',
      'beside',
      'grams each time',
      'days planned',
      'offered',
      'ended on',
      'given to others',
    ],
    ...household.trials.map((t) => [
      t.id,
      t.animalId,
      name(t.animalId),
      t.food,
      t.name,
      t.beside?.name,
      t.grams,
      t.days.join(', '),
      t.offerings
        .map((o) => {
          const grams = [
            ...(o.grams === undefined ? [] : [`${o.grams} g`]),
            ...(o.left === undefined ? [] : [`${o.left} g left`]),
          ];
          const weighed = grams.length > 0 ? ` (${grams.join(', ')})` : '';
          return `${o.on}: ${o.seen}${weighed}${o.note === undefined ? '' : `, ${o.note}`}`;
        })
        .join('; '),
      t.endedOn,
      t.others?.note,
    ]),
  ];
}

export function noteRows(household: Household): Table {
  const name = namer(household);
  return [
    ['id', 'animal', 'animal name', 'on', 'kind', 'text'],
    ...household.notes.map((n) => [n.id, n.animalId, name(n.animalId), n.on, n.kind, n.text]),
  ];
}

function yesOrNo(value: boolean | undefined): string | undefined {
  return value === undefined ? undefined : value ? 'yes' : 'no';
}

/** "oats: 2 g; peas: 1 g; mostly hemp"; empty where nothing was sorted. */
function sorted(remains: Remains | undefined): string | undefined {
  if (!remains) return undefined;
  return [
    ...Object.entries(remains.parts ?? {}).map(([food, grams]) => `${food}: ${grams} g`),
    ...(remains.mostly ?? []).map((food) => `mostly ${food}`),
  ].join('; ');
}
