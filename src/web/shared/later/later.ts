/** What is fetched when it is first needed, or ahead of that once the page is at rest. */
import { whenIdle } from './when-idle.ts';

/** What could not be fetched, to be asked for anew. */
const failed = new Set<() => void>();

/** Whoever needs what could not be fetched asks for it anew. */
export function askAnew(): void {
  for (const forget of failed) forget();
  failed.clear();
}

/** Everything that is fetched later, in the order in which it was named. */
const all: { fetch(): Promise<unknown> }[] = [];

/** Longest that fetching ahead waits for an idle moment, ms; our own choice. */
const BUSY = 1000;

/**
 * Fetches whatever is not here yet, so that the page needs the server for none of it any more: beside the scale the network
 * may be gone. It goes one after the other, each when the page is idle: a press never waits for more than one of them. What
 * cannot be had now is asked for where it is needed.
 */
export async function fetchAll(): Promise<void> {
  // What comes may name more. Nobody asked for it yet: where it is needed it is asked for anew.
  for (const one of all) {
    await new Promise<void>((go) => whenIdle(go, BUSY));
    await one.fetch().catch(askAnew);
  }
}

/** Whether what was thrown tells that something is on its way, and is no fault. */
export function isComing(thrown: unknown): boolean {
  return thrown instanceof Promise;
}

export interface Later<T> {
  /**
   * It, while something is drawn with it; until it is here, what stands around that shows its fallback.
   * @throws what says to React that it is waited for; the error where it could not be had
   */
  now(): T;
  /** Fetches it ahead of its need. @throws where it cannot be had */
  fetch(): Promise<T>;
}

export function later<T>(load: () => Promise<T>): Later<T> {
  let coming: Promise<T> | undefined;
  let here: { readonly value: T } | undefined;
  let fault: { readonly error: unknown } | undefined;
  const fetch = () => {
    coming ??= load().then(
      (value) => {
        here = { value };
        return value;
      },
      (error: unknown) => {
        fault = { error };
        failed.add(() => {
          coming = undefined;
          fault = undefined;
        });
        throw error;
      },
    );
    return coming;
  };
  const made: Later<T> = {
    now() {
      if (here) return here.value;
      if (fault) throw fault.error;
      throw fetch();
    },
    fetch,
  };
  all.push(made);
  return made;
}
