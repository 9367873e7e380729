/** The one keeper of this page, with the browser around it. */
import type { Section } from '../../household/records.ts';
import { deviceStorage } from '../shared/device-storage.ts';
import { fetchRecords, sendChange } from './api.ts';
import { newId } from './new-id.ts';
import { Keeper } from './sync/keeper.ts';
import { listen } from './sync/live.ts';
import { takeOverOlderEntries } from './sync/older-entries.ts';
import { joinTabs } from './sync/tabs.ts';
import { Wanted } from './sync/wanted.ts';

/** How long a page that said it was left has to come back (it may only be loaded anew), ms. */
const GONE = 2000;
/** The id of the page that was left in this tab last; none while one stands in it, since a tab may be copied. */
const BEFORE = 'pouchful.tab';

/** When lists come that no screen has drawn from so far, ms after it was their turn; our own choice. */
const UNWANTED = 1000;

const tab = newId();
const lists = new Wanted(UNWANTED);

/** Fetches at once those of the lists that come last which a screen draws from. */
export const wantLists = (kinds: readonly Section[]) => lists.want(kinds);

export const keeper = new Keeper({
  page: async (after, upTo, of) => {
    if (of !== undefined) await lists.mayCome(of);
    return fetchRecords(after, upTo, of);
  },
  send: sendChange,
  storage: deviceStorage,
  tab,
  newId,
  now: () => new Date().toISOString(),
});

let serverBuild: string | undefined;
const buildListeners = new Set<() => void>();

/** The build that the server gives pages of; undefined until it said. */
export const builds = {
  subscribe(listener: () => void) {
    buildListeners.add(listener);
    return () => buildListeners.delete(listener);
  },
  view: () => serverBuild,
};

let started = false;

/** Begins to keep this page and the server the same. Called again, it looks at once what is new. */
export function startKeeping(): void {
  if (started) return void keeper.pull();
  started = true;
  const before = pageBefore();
  // Loaded anew: what the page before left unsent is shown at once. Of the others, only where they are gone.
  keeper.adopt((other) => other !== before);
  const tabs = joinTabs(
    tab,
    () => setTimeout(() => tabs.ask((isOpen) => keeper.adopt(isOpen)), GONE),
    (name) => (typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel(name)),
  );
  tabs.ask((isOpen) => keeper.adopt(isOpen));

  const older = keeper.subscribe(() => {
    if (!keeper.view().household) return;
    older();
    takeOverOlderEntries(keeper, deviceStorage);
  });

  const live = listen({
    open: () => (typeof EventSource === 'undefined' ? undefined : new EventSource('/api/events')),
    heard: () => keeper.heard(),
    pull: () => void keeper.pull(),
    reached: () => keeper.retry(),
    served(build) {
      serverBuild = build;
      for (const listener of buildListeners) listener();
    },
  });
  const look = () => live.seen(document.visibilityState !== 'hidden');
  look();
  document.addEventListener('visibilitychange', look);
  window.addEventListener('online', look);
  window.addEventListener('pageshow', (event) => {
    if (!event.persisted) return;
    pageBefore();
    look();
  });
  window.addEventListener('pagehide', () => {
    keeper.leave();
    noteLeft();
    tabs.leaving();
  });
  window.addEventListener('beforeunload', (event) => {
    const { waiting, onDevice } = keeper.view();
    if (waiting.length > 0 && !onDevice) event.preventDefault();
  });
}

/** Storage of the tab may be switched off; then what was left is found like that of any other page. */
function pageBefore(): string | undefined {
  try {
    const before = sessionStorage.getItem(BEFORE) ?? undefined;
    sessionStorage.removeItem(BEFORE);
    return before;
  } catch {
    return undefined;
  }
}

function noteLeft(): void {
  try {
    sessionStorage.setItem(BEFORE, tab);
  } catch {
    // What is left here is found like that of any other page.
  }
}
