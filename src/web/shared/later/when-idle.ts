/**
 * Not every browser says when it is idle.
 * @param longest after so many ms it is done all the same; without, a page that is never idle never does it
 */
export function whenIdle(work: () => void, longest?: number): void {
  if ('requestIdleCallback' in globalThis)
    requestIdleCallback(work, longest === undefined ? undefined : { timeout: longest });
  else setTimeout(work);
}
