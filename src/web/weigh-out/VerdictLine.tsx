/** How a batch stands, told alike at each pour, at its end, on its label and in its record: in words and as a shape. */
import type { Settle, Verdict } from '../../formulation/explain/verdict.ts';
import { VerdictShape } from '../shared/verdict/VerdictShape.tsx';
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
      <VerdictShape state={state} size={24} className="weigh-verdict-shape" />{' '}
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
