/** The frame: where one can go, and the screen one is on. */

import { type ReactNode, Suspense, useEffect } from 'react';
import { ErrorBoundary } from 'react-error-boundary';
import { words } from '../../words/words.ts';
import { watchLeaving } from '../shared/hooks/leaving.ts';
import { askAnew } from '../shared/later/later.ts';
import { useFetchedAhead } from '../shared/later/useFetchedAhead.ts';
import { linkTo, useRoute } from '../shared/route.ts';
import { Coming } from '../shared/trouble/Coming.tsx';
import { Contained } from '../shared/trouble/Contained.tsx';
import { rememberTyped } from '../shared/typing/typed-text.ts';
import { Conflicts } from '../store/Conflicts.tsx';
import { useHousehold, useKeeping } from '../store/household.ts';
import { MixDraftProvider } from '../store/mix-draft.tsx';
import { Unsent } from '../store/Unsent.tsx';
import { prepare } from '../worker/engine.ts';
import { useWarmed } from '../worker/useWarmed.ts';
import { ChecksDue } from './ChecksDue.tsx';
import { EngineTrouble } from './EngineTrouble.tsx';
import { FailedScreen } from './FailedScreen.tsx';
import { LeavingQuestion } from './LeavingQuestion.tsx';
import { NewerBuild } from './NewerBuild.tsx';
import { isInKitchen, KitchenNav, PLACES } from './navigation.tsx';
import { StorageTrouble } from './StorageTrouble.tsx';
import { isPlace, Screen } from './screens.tsx';
import { TypedBefore } from './TypedText.tsx';

import './frame.css';

export function App() {
  const t = words().frame;
  const [place = 'today', rest, part] = useRoute();
  useKeeping();
  const household = useHousehold();
  useWarmed(household.isWhole);
  useFetchedAhead(household.isWhole, prepare);
  useEffect(rememberTyped, []);
  useEffect(watchLeaving, []);
  const inKitchen = isInKitchen(place);
  const at = isPlace(place) ? place : 'today';
  /** As the bar names it. */
  const here = inKitchen ? 'calendar' : at;

  /** Within what is drawn for all screens, and around it too: what is being changed in the mix survives a screen. */
  const guarded = (part: ReactNode, key?: string) => (
    <ErrorBoundary
      // Another screen, or another household, is another try.
      resetKeys={[place, rest, part, household.data]}
      onReset={askAnew}
      fallbackRender={({ error, resetErrorBoundary }) => (
        <FailedScreen error={error} place={at} again={resetErrorBoundary} />
      )}
    >
      {/* Another screen is waited for without the one before, which React would keep, hidden. */}
      <Suspense key={key} fallback={<Opening />}>
        {part}
      </Suspense>
    </ErrorBoundary>
  );

  let screen: ReactNode;
  if (household.data) {
    screen = (
      <MixDraftProvider house={household.data}>
        <ErrorBoundary resetKeys={[household.data]} fallback={null}>
          <ChecksDue />
        </ErrorBoundary>
        {inKitchen && <KitchenNav here={at} />}
        {guarded(<Screen place={at} shown={rest} part={part} />, at)}
      </MixDraftProvider>
    );
  } else screen = <Opening />;

  return (
    <>
      <header className="bar">
        <button type="button" className="skip" onClick={toMain}>
          {t.skip}
        </button>
        <a className="brand" href="#/today">
          Pouchful
        </a>
        <nav aria-label={t.mainNav}>
          {PLACES.map((p) => {
            const { long, short } = t.places[p];
            const differ = short !== long;
            return (
              <a key={p} href={linkTo(p)} aria-current={p === here ? 'page' : undefined}>
                <span className={differ ? 'wide' : undefined}>{long}</span>
                {differ && <span className="narrow">{short}</span>}
              </a>
            );
          })}
        </nav>
      </header>
      <Quietly>
        <NewerBuild />
        <EngineTrouble />
        <StorageTrouble />
        <TypedBefore />
        <LeavingQuestion />
      </Quietly>
      <Contained what={t.unsentPart} of={household.data}>
        <Unsent />
        <Conflicts />
      </Contained>
      {guarded(screen)}
    </>
  );
}

/** Until a screen is here, and what it draws from. */
function Opening() {
  const { data, error } = useHousehold();
  const t = words().frame;
  return (
    <main id="main" className="page">
      {error && <h1>{t.notOpened}</h1>}
      {data || error ? <Coming say={t.opening} /> : <h1>{t.opening}</h1>}
    </main>
  );
}

/** What is said beside the screen: should it fail itself, the screen stays. */
function Quietly({ children }: { children: ReactNode }) {
  return <ErrorBoundary fallback={null}>{children}</ErrorBoundary>;
}

/** The address holds the screen after its "#", so the jump is made by hand. */
function toMain() {
  const main = document.getElementById('main');
  main?.setAttribute('tabindex', '-1');
  main?.focus();
}
