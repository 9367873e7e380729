/**
 * Undo and redo without end. The present stands elsewhere (in the household); a history holds what was before it
 * and what was taken back, each as a chain, so that a step costs the same however many there are.
 *
 * What a step costs: versions share whatever a change left alone, so a step holds only what changed. Measured in
 * Node 20 with a mix of 20 foods: 0.8 kB where all shares moved, 0.6 kB where a food's bounds changed; 10,000 steps
 * take 6 to 8 MB.
 */
export interface Steps<T> {
  readonly version: T;
  readonly next: Steps<T> | undefined;
  /** How many there are from here on. */
  readonly length: number;
}

export interface History<T> {
  /** What the present was before, the last first. */
  readonly past: Steps<T> | undefined;
  /** What was taken back, the last taken back first. */
  readonly future: Steps<T> | undefined;
  /** The step that the next change may still belong to. */
  readonly open: { readonly step: string; readonly at: number } | undefined;
}

/** A present, and the history that goes with it. */
export interface Turned<T> {
  readonly present: T;
  readonly history: History<T>;
}

export const NO_HISTORY: History<never> = { past: undefined, future: undefined, open: undefined };

/** Changes of the same step that follow one another sooner than this are one. */
export const ONE_STEP_MS = 1200;

/**
 * The history once `present` is about to be replaced. What was taken back before can be brought again no more.
 * @param step changes of the same step made close together are undone together; '' is never joined to another
 * @param at when, in milliseconds on any clock
 */
export function changed<T>(history: History<T>, present: T, step: string, at: number): History<T> {
  const { open, past } = history;
  const same = step !== '' && open?.step === step && at - open.at < ONE_STEP_MS;
  return { past: same ? past : onto(past, present), future: undefined, open: { step, at } };
}

/** Takes back the last step; undefined where there is none. */
export function undone<T>(history: History<T>, present: T): Turned<T> | undefined {
  const { past, future } = history;
  if (!past) return undefined;
  return {
    present: past.version,
    history: { past: past.next, future: onto(future, present), open: undefined },
  };
}

/** Makes again the step last taken back; undefined where there is none. */
export function redone<T>(history: History<T>, present: T): Turned<T> | undefined {
  const { past, future } = history;
  if (!future) return undefined;
  return {
    present: future.version,
    history: { past: onto(past, present), future: future.next, open: undefined },
  };
}

function onto<T>(next: Steps<T> | undefined, version: T): Steps<T> {
  return { version, next, length: (next?.length ?? 0) + 1 };
}
