/** Small pictures drawn here; each is decoration beside words or under a label. */
import { VerdictShape } from '../shared/verdict/VerdictShape.tsx';
import type { MixState } from './useFormulation.ts';

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
 * The state of the mix as a shape: that of its verdict; dashed posts while it is worked out; posts that leave no room where
 * no mix can be.
 */
export function StateIcon({ state }: { state: MixState }) {
  if (state === 'sure' || state === 'if' || state === 'out')
    return <VerdictShape state={state} size={32} className="state-icon" />;
  return (
    <svg className="state-icon" viewBox="0 0 32 32" width="32" height="32" aria-hidden="true">
      {state === 'working' ? (
        <path d="M4 4 V28 M28 4 V28" stroke="currentColor" strokeWidth="3" strokeDasharray="3 4" />
      ) : (
        <>
          <path d="M21 4 V28 M11 4 V28" stroke="currentColor" strokeWidth="3" />
          <path
            d="M2 16 H9 M5 12 L9 16 L5 20 M30 16 H23 M27 12 L23 16 L27 20"
            fill="none"
            stroke="currentColor"
            strokeWidth="2.5"
          />
        </>
      )}
    </svg>
  );
}
