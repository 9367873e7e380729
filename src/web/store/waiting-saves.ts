/** Changes of this page that are saved a little later: what must find them saved lets them go first. */
const all = new Set<() => Promise<unknown>>();

/** @param settle saves what waits and is ready once that is done @returns a function that takes it out again */
export function onSaveNow(settle: () => Promise<unknown>): () => void {
  all.add(settle);
  return () => {
    all.delete(settle);
  };
}

/** Ready once everything that waited is saved, or could not be. */
export async function saveNow(): Promise<void> {
  await Promise.all([...all].map((settle) => settle()));
}
