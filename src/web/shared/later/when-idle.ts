/** Not every browser says when it is idle. */
export function whenIdle(work: () => void): void {
  if ('requestIdleCallback' in window) window.requestIdleCallback(work);
  else setTimeout(work);
}
