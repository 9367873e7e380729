/** Whose request it is: every route reads and writes the household of its caller. */
import type { Store } from '../household/store.ts';

export interface Caller {
  readonly store: Store;
  /** Id of the household. */
  readonly household: string;
  /** Name of the device, as the keeper reads it in the history. */
  readonly device: string;
  /** Id of the device's token; absent where this machine alone is served and none is asked for. */
  readonly deviceId?: string;
}

/** What the access check leaves in the request's context. */
export interface CallerEnv {
  Variables: { caller: Caller };
}
