/** The one sentence: may this be fed, and if not, why. */
import { Button } from 'react-aria-components';
import { StateIcon } from './icons.tsx';
import type { FormulationView } from './useFormulation.ts';
import './Verdict.css';
import { capital } from '../../formulation/explain/sentences.ts';

export const STATE_WORDS: Record<FormulationView['state'], string> = {
  in: 'In range',
  out: 'Out of range',
  none: 'No mix can keep these rules',
  working: 'Working it out',
  fault: 'The mix cannot be read',
};

export function Verdict({ view }: { view: FormulationView }) {
  const { state } = view;
  const sentence =
    state === 'fault'
      ? `${view.fault?.field ? `${view.fault.field}: ` : ''}${view.fault?.message}`
      : state === 'none'
        ? view.collision?.verdict
        : view.evaluation?.verdict;
  return (
    <section className={`verdict ${state}`} aria-label="Verdict">
      <div className="verdict-words">
        <StateIcon state={state} />
        <p aria-live="polite" data-testid="verdict" data-state={state}>
          <strong>{STATE_WORDS[state]}.</strong> {withoutWord(sentence ?? '', state)}
        </p>
      </div>
      <Button className="big-button" onPress={() => void view.balance()} isDisabled={state === 'fault'}>
        Balance the mix
      </Button>
      <p className="caution">
        Not veterinary advice. A home mix never replaces a complete food; change foods slowly over 10 to 14
        days (common practice); see a vet on weight loss or illness.
      </p>
      <p className="notice" aria-live="polite">
        {view.notice}
      </p>
    </section>
  );
}

/** The sentence without the state word it may begin with, which stands before it in bold. */
export function withoutWord(sentence: string, state: FormulationView['state']): string {
  const opening =
    state === 'none' ? /^No mix[^:.]*:\s*/ : state === 'out' ? /^Out of range:\s*/ : /^In range[:.]\s*/;
  const rest = sentence.replace(opening, '');
  return capital(rest);
}
