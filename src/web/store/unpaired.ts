/** Tells the page where this device may no longer come in. */
const listeners = new Set<() => void>();

/** Says that the server answered 401: perhaps this device was put out. */
export function tellUnpaired(): void {
  for (const listener of listeners) listener();
}

export function onUnpaired(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}
