/** The secret of a pairing link, which stands after the "#" of the address: "#pair=..." */

const MARK = '#pair=';

export function secretInAddress(): string | undefined {
  const { hash } = window.location;
  return hash.startsWith(MARK) ? hash.slice(MARK.length) : undefined;
}

/** Takes it out of the address and of the browser's history, where it is of no more use. */
export function forgetSecret(): void {
  if (secretInAddress() === undefined) return;
  window.history.replaceState(null, '', '#/today');
  // The browser tells nobody of this by itself.
  window.dispatchEvent(new HashChangeEvent('hashchange'));
}
