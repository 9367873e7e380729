/** Moves the keyboard to a place that may be drawn only a moment from now. */

/** Most frames to wait; at 60 a second about half a second. */
const MOST_FRAMES = 30;

/** Focuses the first element that `selector` finds, once there is one; gives up quietly when none comes. */
export function focusWhenThere(selector: string, frames = MOST_FRAMES): void {
  const found = document.querySelector<HTMLElement>(selector);
  if (found?.checkVisibility()) {
    if (found.tabIndex < 0) found.tabIndex = -1;
    found.focus();
  } else if (frames > 0) requestAnimationFrame(() => focusWhenThere(selector, frames - 1));
}
