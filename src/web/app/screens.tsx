/** The screens: Now comes with the page, each other where one goes there, and all of them once the page is at rest. */
import type { ReactNode } from 'react';
import { DAILY, type Daily } from '../../household/records.ts';
import type { Part } from '../../words/part-shapes.ts';
import { PARTS } from '../../words/parts.ts';
import { type Later, later } from '../shared/later/later.ts';
import { fetchTexts } from '../shared/words/texts.ts';
import { StartHere } from '../start/StartHere.tsx';
import { useMixDraft } from '../store/mix-draft.tsx';
import { wantLists } from '../store/page-keeper.ts';
import { fetchForMix, TodayScreen } from '../today/TodayScreen.tsx';
import { warm } from '../worker/engine.ts';
import type { Room } from '../worker/room-texts.ts';

/** Draws a screen, with what follows its place in the address, and what follows that. */
type Drawn = (props: Shown) => ReactNode;

interface Shown {
  readonly shown: string | undefined;
  readonly part: string | undefined;
}

/** In the order in which they are fetched ahead: what is needed where a network may be gone comes first. */
const SCREENS = {
  weigh: screen(
    () => import('../weigh-out/WeighOutScreen.tsx').then((m) => m.WeighOutScreen),
    ['days', 'scale', 'solving'],
  ),
  animals: screen(() => import('../animals/AnimalsScreen.tsx').then((m) => m.AnimalsScreen)),
  calendar: screen(() => import('../calendar/CalendarScreen.tsx').then((m) => m.CalendarScreen)),
  shopping: screen(() => import('../shopping/ShoppingScreen.tsx').then((m) => m.ShoppingScreen)),
  cupboard: screen(() => import('../cupboard/CupboardScreen.tsx').then((m) => m.CupboardScreen)),
  drying: screen(() => import('../drying/DryingScreen.tsx').then((m) => m.DryingScreen)),
  mix: screen(() => import('../mix/MixScreen.tsx').then((m) => m.MixScreen)),
  foods: screen(() => import('../foods/FoodsScreen.tsx').then((m) => m.FoodsScreen)),
  targets: screen(() => import('../targets/TargetsScreen.tsx').then((m) => m.TargetsScreen)),
  household: screen(() => import('../keeping/KeepingScreen.tsx').then((m) => m.KeepingScreen)),
} as const;

/** A screen with the texts that it may say: all of them, but beside the scale, which is to stand soon on a phone. */
function screen(load: () => Promise<Drawn>, texts: readonly Part[] = PARTS): Later<Drawn> {
  return later(async () => (await Promise.all([load(), ...texts.map(fetchTexts)]))[0]);
}

type Place = keyof typeof SCREENS;

/** Whether the address names a screen other than Now. */
export function isPlace(place: string): place is Place {
  return Object.hasOwn(SCREENS, place);
}

/**
 * What of the lists that come last a screen draws from; it stands once they are whole. Where nothing is said, all of them.
 * What is left of packs follows from what was fed of them.
 */
const DRAWS_FROM: { readonly [place in Place]?: readonly Daily[] } = {
  ...{ weigh: ['feedings'], shopping: ['feedings'], cupboard: ['feedings'], drying: ['feedings'] },
  ...{ calendar: ['feedings'], mix: [], foods: [], targets: [] },
};
/** Of the household's parts only what is taken out or brought in draws from them. */
const WHOLE_HOUSEHOLD: readonly string[] = ['out-and-in', 'table'];

function drawsFrom(place: string, part: string | undefined): readonly Daily[] {
  if (place === 'household') return part && WHOLE_HOUSEHOLD.includes(part) ? DAILY : [];
  return (isPlace(place) && DRAWS_FROM[place]) || DAILY;
}

/**
 * What these show first rests on the worker, and on these of its parts; on none where it only names foods. It is opened
 * while the household comes in.
 */
const ASKS: { readonly [place in Place]?: readonly Room[] } = {
  ...{ mix: ['mixes'], weigh: ['mixes', 'papers'], shopping: ['mixes', 'shopping'] },
  ...{ foods: [], calendar: [] },
};

/** Fetches the screen of an address ahead, and what it draws from. A failure is told where it is drawn. */
export function fetchScreen(hash: string): void {
  const [, place = '', part] = hash.split('/');
  wantLists(drawsFrom(place, part));
  // What a batch's own page says besides.
  if (place === 'weigh' && part)
    for (const text of ['care', 'answers'] as const) void fetchTexts(text).catch(() => {});
  if (!isPlace(place)) return void fetchForMix().catch(() => {});
  SCREENS[place].fetch().catch(() => {});
  const asked = ASKS[place];
  if (asked) warm(asked);
}

/** The screen one is on; Now where the address names none. */
export function Screen({ place, ...rest }: { readonly place: string } & Shown) {
  const { house } = useMixDraft();
  const lists = drawsFrom(place, rest.shown);
  wantLists(lists);
  // Now draws what it has, and the rest when that is here.
  if (!isPlace(place)) return <TodayScreen start={<StartHere />} />;
  // Reading a list that is not here yet is waiting for it.
  for (const kind of lists) void house[kind];
  const At = SCREENS[place].now();
  return <At {...rest} />;
}
