/** Small pictures drawn here; each is decoration beside words or under a label. */
import { isFit, type MixState } from './useFormulation.ts';

export function HoldIcon({ closed }: { closed: boolean }) {
  return (
    <svg viewBox="0 0 20 20" width="18" height="18" aria-hidden="true">
      <path d="M10 18 V11" stroke="currentColor" strokeWidth="1.6" />
      <path
        d="M6 3 h8 l-1.6 4.2 2.4 3.8 h-9.6 l2.4-3.8 z"
        fill={closed ? 'currentColor' : 'none'}
        stroke="currentColor"
        strokeWidth="1.5"
        strokeLinejoin="round"
      />
    </svg>
  );
}

/**
 * The state of the mix as a shape: a whole ring with a tick where it is surely in range, an open ring with one where it
 * is so on the average; a mark, a cross, a dotted ring.
 */
export function StateIcon({ state }: { state: MixState }) {
  return (
    <svg className="state-icon" viewBox="0 0 32 32" width="32" height="32" aria-hidden="true">
      <circle
        cx="16"
        cy="16"
        r="12"
        fill="none"
        stroke="currentColor"
        strokeWidth="2.5"
        strokeDasharray={state === 'working' ? '3 4' : state === 'in' ? '52 24' : undefined}
        strokeDashoffset={state === 'in' ? -4 : undefined}
      />
      {isFit(state) && (
        <path d="M10 16.5 l4.2 4.2 L22.5 12" fill="none" stroke="currentColor" strokeWidth="3" />
      )}
      {state === 'out' && <path d="M16 9 v9 M16 21.2 v2.6" stroke="currentColor" strokeWidth="3" />}
      {(state === 'none' || state === 'fault') && (
        <path d="M11 11 L21 21 M21 11 L11 21" stroke="currentColor" strokeWidth="3" />
      )}
    </svg>
  );
}
