/**
 * Before another screen is opened, or the page closed, the keeper is asked while a form holds something typed and unsaved.
 *
 * Every `<form>` is watched by itself: it holds something once text was typed into it, until it is sent and not refused. A
 * press inside of it (Save, Cancel) that goes on to another screen by `go` is not asked about. What is typed outside of a
 * form says so by {@link useLeaving}.
 */
import { useEffect, useRef } from 'react';
import { follow, gateRoute, shownHash, stay } from '../route.ts';
import { formsWithTyped, isReloading } from '../typing/typed-text.ts';

/** Things outside of forms that hold something unsaved. */
const holders = new Set<object>();
const listeners = new Set<() => void>();
const PRESSES = ['pointerdown', 'click', 'keydown'] as const;
let asked = false;
let pressed: Node | null = null;

/**
 * For what is no form: asks before it is left while it holds something unsaved.
 * @returns frees it: to be called before going on, where what it holds was kept or is let go
 */
export function useLeaving(holds: boolean): () => void {
  const holder = useRef({});
  useEffect(() => {
    const { current } = holder;
    if (holds) holders.add(current);
    return () => void holders.delete(current);
  }, [holds]);
  return () => void holders.delete(holder.current);
}

/** The question to the keeper, whether it is asked now. */
export const leavingQuestion = {
  subscribe(listener: () => void) {
    listeners.add(listener);
    return () => void listeners.delete(listener);
  },
  isAsked: () => asked,
  stay() {
    ask(false);
    stay();
  },
  leave() {
    ask(false);
    follow();
  },
};

/** Begins to watch what is left. @returns what ends it */
export function watchLeaving(): () => void {
  const press = (event: Event) => {
    if (event instanceof KeyboardEvent && !['Enter', ' ', 'Escape'].includes(event.key)) return;
    pressed = event.target as Node;
  };
  const closing = (event: BeforeUnloadEvent) => {
    if (!isReloading() && (holders.size > 0 || formsWithTyped().length > 0)) event.preventDefault();
  };
  // Back where it was, by the browser's own button: they stay.
  const back = () => window.location.hash === shownHash() && ask(false);
  for (const kind of PRESSES) document.addEventListener(kind, press, true);
  window.addEventListener('beforeunload', closing);
  window.addEventListener('hashchange', back);
  gateRoute((own) => {
    const forms = formsWithTyped().filter((form) => !own || !form.contains(pressed));
    if (holders.size === 0 && forms.length === 0) {
      ask(false);
      return false;
    }
    ask(true);
    return true;
  });
  return () => {
    for (const kind of PRESSES) document.removeEventListener(kind, press, true);
    window.removeEventListener('beforeunload', closing);
    window.removeEventListener('hashchange', back);
    gateRoute(() => false);
  };
}

function ask(now: boolean): void {
  if (now === asked) return;
  asked = now;
  for (const listener of listeners) listener();
}
