/** How a batch stands, told alike at each pour, at its end, on its label and in its record: in words and as a shape. */
import type { Settle, Verdict, VerdictState } from '../../formulation/explain/verdict.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import './verdict-line.css';

export function VerdictLine(props: {
  verdict: Verdict;
  /** The head alone: beside the scale there is no room for reasons. */
  short?: boolean;
  id: string;
  /** Where the figure is written that would settle it; without, no way is told. */
  page?(settle: Settle): string;
}) {
  const { verdict, short, id, page } = props;
  const { state, head, rest, settle } = verdict;
  return (
    <p className="weigh-verdict" data-testid={id} data-state={state}>
      <VerdictShape state={state} />{' '}
      <span>
        <strong>{head}</strong>
        {!short && rest && `. ${rest}`}
        {!short && page && settle && (
          <>
            {' '}
            <Sentence of={settle.sentence} with={{ food: (text) => <a href={page(settle)}>{text}</a> }} />
          </>
        )}
      </span>
    </p>
  );
}

/** Where the diamond of what is fed lies beside the two posts of its range. */
const PLACED: Record<VerdictState, { readonly at: number; readonly posts: readonly [number, number] }> = {
  sure: { at: 16, posts: [4, 28] },
  if: { at: 16, posts: [4, 28] },
  out: { at: 26, posts: [3, 15] },
};

/** Full between its posts, hollow with a reach past one of them, full beyond them: told without any colour. */
export function VerdictShape({ state }: { state: VerdictState }) {
  const { at, posts } = PLACED[state];
  return (
    <svg className="weigh-verdict-shape" viewBox="0 0 32 32" width="24" height="24" aria-hidden="true">
      <path d={posts.map((x) => `M${x} 4 V28`).join(' ')} stroke="currentColor" strokeWidth="3" />
      <path
        d={`M${at} 9 l7 7 -7 7 -7 -7 z`}
        fill={state === 'if' ? 'none' : 'currentColor'}
        stroke="currentColor"
        strokeWidth="2"
        strokeLinejoin="round"
      />
      {state === 'if' && <path d="M23 16 H32 M32 12.5 V19.5" stroke="currentColor" strokeWidth="2" />}
    </svg>
  );
}
