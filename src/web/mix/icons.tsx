/** Small pictures drawn here; each is decoration beside words or under a label. */
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

/** Where the diamond of the ration lies beside the two posts of its range, as in the lanes of the nutrients. */
const PLACED: Record<MixState, { readonly at: number; readonly posts: readonly [number, number] }> = {
  sure: { at: 16, posts: [4, 28] },
  if: { at: 16, posts: [4, 28] },
  out: { at: 24, posts: [3, 13] },
  none: { at: 16, posts: [21, 11] },
  working: { at: 16, posts: [4, 28] },
  fault: { at: 16, posts: [21, 11] },
};

/**
 * The state of the mix as a shape, a range with what is fed in it: a full diamond between its posts where that is sure; a
 * hollow one that may reach past a post where something is not known; a full one beyond its post where it is out of range;
 * posts that leave no room where no mix can be.
 */
export function StateIcon({ state }: { state: MixState }) {
  const { at, posts } = PLACED[state];
  const inside = state === 'sure' || state === 'out';
  const empty = state === 'none' || state === 'fault';
  return (
    <svg className="state-icon" viewBox="0 0 32 32" width="32" height="32" aria-hidden="true">
      <path
        d={posts.map((x) => `M${x} 4 V28`).join(' ')}
        stroke="currentColor"
        strokeWidth="3"
        strokeDasharray={state === 'working' ? '3 4' : undefined}
      />
      {empty ? (
        <path
          d="M2 16 H9 M5 12 L9 16 L5 20 M30 16 H23 M27 12 L23 16 L27 20"
          fill="none"
          stroke="currentColor"
          strokeWidth="2.5"
        />
      ) : (
        state !== 'working' && (
          <path
            d={`M${at} 9 l7 7 -7 7 -7 -7 z`}
            fill={inside ? 'currentColor' : 'none'}
            stroke="currentColor"
            strokeWidth="2"
            strokeLinejoin="round"
          />
        )
      )}
      {state === 'if' && <path d="M23 16 H32 M32 12.5 V19.5" stroke="currentColor" strokeWidth="2" />}
      {state === 'out' && <path d="M13 16 H18" stroke="currentColor" strokeWidth="2" />}
    </svg>
  );
}
