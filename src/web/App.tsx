/** The frame: where one can go, and the screen one is on. */
import type { ReactNode } from 'react';
import { Button } from 'react-aria-components';
import { useHousehold } from './data/household.ts';
import { MixDraftProvider } from './data/mix-draft.tsx';
import { useRoute } from './data/route.ts';
import { AnimalsScreen } from './screens/AnimalsScreen.tsx';
import { CupboardScreen } from './screens/CupboardScreen.tsx';
import { FoodsScreen } from './screens/FoodsScreen.tsx';
import { MixScreen } from './screens/MixScreen.tsx';
import { TargetsScreen } from './screens/TargetsScreen.tsx';
import { WeighOutScreen } from './screens/WeighOutScreen.tsx';
import './styles/animals.css';

const PLACES = [
  ['foods', 'Foods'],
  ['targets', 'Targets'],
  ['mix', 'Mix'],
  ['cupboard', 'Cupboard'],
  ['animals', 'Animals'],
] as const;

export function App() {
  const [place = 'mix', rest] = useRoute();
  const household = useHousehold();
  const here = PLACES.some(([p]) => p === place) ? place : 'mix';

  let screen: ReactNode;
  if (household.data) {
    screen = (
      <MixDraftProvider house={household.data}>
        {here === 'foods' ? (
          <FoodsScreen shown={rest} />
        ) : here === 'targets' ? (
          <TargetsScreen shown={rest} />
        ) : here === 'cupboard' ? (
          <CupboardScreen shown={rest} />
        ) : here === 'animals' ? (
          <AnimalsScreen shown={rest} />
        ) : place === 'weigh' ? (
          <WeighOutScreen shown={rest} />
        ) : (
          <MixScreen />
        )}
      </MixDraftProvider>
    );
  } else {
    screen = (
      <main id="main" className="page">
        <h1>{household.error ? 'The household could not be opened' : 'Opening the household…'}</h1>
        {household.error && (
          <>
            <p role="alert">{household.error.message}</p>
            <Button className="button" onPress={() => void household.refetch()}>
              Try again
            </Button>
          </>
        )}
      </main>
    );
  }

  return (
    <>
      <header className="bar">
        <button type="button" className="skip" onClick={toMain}>
          Skip to content
        </button>
        <span className="brand">Pouchful</span>
        <nav aria-label="Main">
          {PLACES.map(([p, words]) => (
            <a key={p} href={`#/${p}`} aria-current={p === here ? 'page' : undefined}>
              {words}
            </a>
          ))}
        </nav>
      </header>
      {screen}
    </>
  );
}

/** The address holds the screen after its "#", so the jump is made by hand. */
function toMain() {
  const main = document.getElementById('main');
  main?.setAttribute('tabindex', '-1');
  main?.focus();
}
