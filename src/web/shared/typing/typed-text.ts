/**
 * What was typed on the screen at hand and may not be kept yet: before the screen is left the keeper is asked
 * (`../hooks/leaving.ts`), and when it fails or the page is loaded anew, it can still be read and copied. It never leaves this
 * tab.
 */
import { words } from '../../../words/words.ts';
import { tabStorage } from '../device-storage.ts';
import { shownHash } from '../route.ts';

export interface Typed {
  readonly label: string;
  readonly text: string;
}

const KEY = 'pouchful.typed';
/** Fields of one screen that are remembered, and letters of each. */
const MOST_FIELDS = 100;
const MOST_LETTERS = 10_000;

type Field = HTMLInputElement | HTMLTextAreaElement;

const here = new Map<Field, Typed>();
/** By field: what it held when its form was sent. */
const sent = new WeakMap<Field, string>();
let screen = '';
let reloading = false;

/** Begins to remember. @returns what ends it */
export function rememberTyped(): () => void {
  const heard = ({ target }: Event) => {
    if (!isText(target)) return;
    if (screen !== shownHash()) here.clear();
    screen = shownHash();
    if (here.size >= MOST_FIELDS && !here.has(target)) return;
    here.set(target, { label: labelOf(target), text: target.value.slice(0, MOST_LETTERS) });
  };
  const submitted = ({ target }: Event) => {
    for (const field of here.keys()) if (field.form === target) sent.set(field, field.value);
  };
  document.addEventListener('input', heard, true);
  document.addEventListener('submit', submitted, true);
  return () => {
    document.removeEventListener('input', heard, true);
    document.removeEventListener('submit', submitted, true);
  };
}

/** What was typed on this screen, in the order of the fields as they were first used; emptied ones left out. */
export function typedHere(): Typed[] {
  return screen === shownHash() ? [...here.values()].filter((t) => t.text !== '') : [];
}

/** Forms on the screen that hold something typed which they were not sent with, or which was refused. */
export function formsWithTyped(): HTMLFormElement[] {
  const forms = new Set<HTMLFormElement>();
  for (const field of here.keys()) {
    const { form, value, type } = field;
    if (!form?.isConnected || value === '' || type === 'search') continue;
    if (sent.get(field) !== value || isRefused(form)) forms.add(form);
  }
  return [...forms];
}

/** Whether a form says that something in it is wrong. */
function isRefused(form: HTMLFormElement): boolean {
  return form.querySelector('[role="alert"], [aria-invalid="true"], .field-error') !== null;
}

/** Loads the page anew by the keeper's own press. What was typed is there to be read afterwards. */
export function reloadKeepingTyped(): void {
  const typed = typedHere();
  if (typed.length > 0) tabStorage.setItem(KEY, JSON.stringify(typed));
  reloading = true;
  window.location.reload();
}

/** Whether the page is about to be loaded anew, with what was typed kept. */
export const isReloading = (): boolean => reloading;

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

function isText(target: EventTarget | null): target is Field {
  return (
    target instanceof HTMLTextAreaElement ||
    (target instanceof HTMLInputElement &&
      !['checkbox', 'radio', 'range', 'file', 'password'].includes(target.type))
  );
}

function labelOf(field: Field): string {
  const label = field.labels?.[0]?.textContent?.trim() || field.getAttribute('aria-label');
  return label || words().frame.typed.field;
}
