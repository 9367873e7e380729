/**
 * What was typed on the screen at hand and may not be kept yet: when the screen fails or the page is loaded anew, it can
 * still be read and copied. It never leaves this tab.
 */
import { words } from '../../words/words.ts';
import { tabStorage } from '../shared/device-storage.ts';

export interface Typed {
  readonly label: string;
  readonly text: string;
}

const KEY = 'pouchful.typed';
/** Fields of one screen that are remembered, and letters of each. */
const MOST_FIELDS = 100;
const MOST_LETTERS = 10_000;

const here = new Map<Element, Typed>();
let screen = '';

/** Begins to remember. @returns what ends it */
export function rememberTyped(): () => void {
  const heard = ({ target }: Event) => {
    if (!isText(target)) return;
    if (screen !== window.location.hash) forgetTyped();
    screen = window.location.hash;
    if (here.size >= MOST_FIELDS && !here.has(target)) return;
    here.set(target, { label: labelOf(target), text: target.value.slice(0, MOST_LETTERS) });
  };
  document.addEventListener('input', heard, true);
  return () => document.removeEventListener('input', heard, true);
}

/** What was typed on this screen, in the order of the fields as they were first used; emptied ones left out. */
export function typedHere(): Typed[] {
  return screen === window.location.hash ? [...here.values()].filter((t) => t.text !== '') : [];
}

function forgetTyped(): void {
  here.clear();
}

/** Keeps what was typed for after the page is loaded anew. */
export function keepTyped(): void {
  const typed = typedHere();
  if (typed.length > 0) tabStorage.setItem(KEY, JSON.stringify(typed));
}

/** What was typed before the page was loaded anew. */
export function typedBefore(): readonly Typed[] {
  try {
    const kept: unknown = JSON.parse(tabStorage.getItem(KEY) ?? '[]');
    return Array.isArray(kept) ? kept.filter(isTyped) : [];
  } catch {
    return [];
  }
}

export function forgetTypedBefore(): void {
  tabStorage.removeItem(KEY);
}

function isTyped(thing: unknown): thing is Typed {
  const typed = thing as Partial<Typed> | null;
  return typeof typed?.label === 'string' && typeof typed.text === 'string';
}

function isText(target: EventTarget | null): target is HTMLInputElement | HTMLTextAreaElement {
  return (
    target instanceof HTMLTextAreaElement ||
    (target instanceof HTMLInputElement &&
      !['checkbox', 'radio', 'range', 'file', 'password'].includes(target.type))
  );
}

function labelOf(field: HTMLInputElement | HTMLTextAreaElement): string {
  return (
    field.labels?.[0]?.textContent?.trim() || field.getAttribute('aria-label') || words().frame.typed.field
  );
}
