/** A part of a screen that is fetched when it is first shown; nothing stands in its place until then. */
import { type ComponentType, Suspense } from 'react';
import { later } from './later.ts';

export function shownLater<P extends object>(load: () => Promise<ComponentType<P>>): ComponentType<P> {
  const fetched = later(load);
  // Made once, where the module is loaded: never anew while something is drawn.
  // biome-ignore lint/correctness/noComponentHookFactories: it is called at module level only.
  function Fetched(props: P) {
    const Part = fetched.now();
    return <Part {...props} />;
  }
  // biome-ignore lint/correctness/noComponentHookFactories: it is called at module level only.
  return function ShownLater(props: P) {
    return (
      <Suspense>
        <Fetched {...props} />
      </Suspense>
    );
  };
}
