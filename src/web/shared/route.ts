/** The screen in the address: "#/foods/sr28:20038" is ["foods", "sr28:20038"]. */
import { useSyncExternalStore } from 'react';

/** The address that is shown: behind the browser's while the keeper is asked whether to leave. */
let shown: string | undefined;
const listeners = new Set<() => void>();
let gate: (own: boolean) => boolean = () => false;
/** An address that the program itself went to. */
let ownWay: string | undefined;

export function useRoute(): readonly (string | undefined)[] {
  const hash = useSyncExternalStore(subscribe, shownHash);
  return hash.split('/').slice(1).map(decoded);
}

/** The part of the address after "#" that the page shows. */
export function shownHash(): string {
  shown ??= window.location.hash;
  return shown;
}

/** A part as it was before it became one of an address; one that is malformed stands for itself. */
function decoded(part: string): string {
  try {
    return decodeURIComponent(part);
  } catch {
    return part;
  }
}

export function go(...parts: string[]): void {
  ownWay = linkTo(...parts);
  window.location.hash = ownWay;
}

export function linkTo(...parts: string[]): string {
  return `#/${parts.map(encodeURIComponent).join('/')}`;
}

/**
 * @param holds whether another address has to wait; then {@link follow} or {@link stay} says how it goes on. It is told
 * whether the program went there by {@link go}
 */
export function gateRoute(holds: (own: boolean) => boolean): void {
  gate = holds;
}

/** Shows the address that the browser has. */
export function follow(): void {
  shown = window.location.hash;
  for (const listener of listeners) listener();
}

/** Puts the address that is shown back into the browser. */
export function stay(): void {
  window.history.replaceState(window.history.state, '', shownHash() || '#');
}

function heard(): void {
  const { hash } = window.location;
  const own = hash === ownWay;
  ownWay = undefined;
  if (hash !== shownHash() && !gate(own)) follow();
}

function subscribe(changed: () => void): () => void {
  if (listeners.size === 0) {
    window.addEventListener('hashchange', heard);
    // Meanwhile nobody listened.
    shown = window.location.hash;
  }
  listeners.add(changed);
  return () => {
    listeners.delete(changed);
    if (listeners.size === 0) window.removeEventListener('hashchange', heard);
  };
}
