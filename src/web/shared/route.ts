/** The screen in the address: "#/foods/sr28:20038" is ["foods", "sr28:20038"]. */
import { useSyncExternalStore } from 'react';

export function useRoute(): readonly (string | undefined)[] {
  const hash = useSyncExternalStore(subscribe, () => window.location.hash);
  return hash.split('/').slice(1).map(decoded);
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
  window.location.hash = `/${parts.map(encodeURIComponent).join('/')}`;
}

export function linkTo(...parts: string[]): string {
  return `#/${parts.map(encodeURIComponent).join('/')}`;
}

function subscribe(changed: () => void): () => void {
  window.addEventListener('hashchange', changed);
  return () => window.removeEventListener('hashchange', changed);
}
