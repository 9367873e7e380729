/** How a mix or a batch stands, as a shape: a range with what is fed in it, as in the lanes of the nutrients. */
import type { VerdictState } from '../../../formulation/explain/verdict.ts';

/** Where the diamond of the ration lies beside the two posts of its range. */
const PLACED: Record<VerdictState, { readonly at: number; readonly posts: string }> = {
  sure: { at: 16, posts: 'M4 4 V28 M28 4 V28' },
  if: { at: 16, posts: 'M4 4 V28 M28 4 V28' },
  out: { at: 24, posts: 'M3 4 V28 M13 4 V28' },
};

/**
 * A full diamond between its posts where it is surely in range; a hollow one that may reach past a post where something is
 * not known; a full one beyond its post where it is out of range: told without any colour.
 * @param props.size of its square, px
 */
export function VerdictShape(props: { state: VerdictState; size: number; className: string }) {
  const { state, size, className } = props;
  const { at, posts } = PLACED[state];
  return (
    <svg className={className} viewBox="0 0 32 32" width={size} height={size} aria-hidden="true">
      <path d={posts} stroke="currentColor" strokeWidth="3" />
      <path
        d={`M${at} 9 l7 7 -7 7 -7 -7 z`}
        fill={state === 'if' ? 'none' : 'currentColor'}
        stroke="currentColor"
        strokeWidth="2"
        strokeLinejoin="round"
      />
      {state === 'if' && <path d="M23 16 H32 M32 12.5 V19.5" stroke="currentColor" strokeWidth="2" />}
      {state === 'out' && <path d="M13 16 H18" stroke="currentColor" strokeWidth="2" />}
    </svg>
  );
}
