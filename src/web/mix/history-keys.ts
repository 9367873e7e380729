/** The keys for undo and redo: Ctrl or Cmd with Z, with Shift+Z, and Ctrl+Y. */

/** What is read of a pressed key; a KeyboardEvent of a browser is one. */
interface Pressed {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
}

export function historyKey({
  key,
  ctrlKey,
  metaKey,
  shiftKey,
  altKey,
}: Pressed): 'undo' | 'redo' | undefined {
  if (altKey || ctrlKey === metaKey) return undefined;
  const letter = key.toLowerCase();
  if (letter === 'z') return shiftKey ? 'redo' : 'undo';
  return letter === 'y' && ctrlKey && !shiftKey ? 'redo' : undefined;
}

/** Inputs without text of their own to undo. */
const NOT_TYPED = ['range', 'checkbox', 'radio', 'button', 'submit', 'reset', 'color', 'file'];

/** Whether the element undoes its own typing, so that the keys are not ours. */
export function undoesTyping(element: {
  tagName?: string;
  type?: string;
  isContentEditable?: boolean;
}): boolean {
  const tag = element.tagName?.toLowerCase();
  if (tag === 'textarea' || element.isContentEditable) return true;
  return tag === 'input' && !NOT_TYPED.includes(element.type ?? 'text');
}
