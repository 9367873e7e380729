/** The one sentence: may this be fed, and if not, why. */
import { Button } from 'react-aria-components';
import { StateIcon } from './icons.tsx';
import { type FormulationView, isFit, type MixState } from './useFormulation.ts';
import './Verdict.css';
import { capital } from '../../formulation/explain/sentences.ts';

export const STATE_WORDS: Record<MixState, string> = {
  sure: 'Surely in range',
  in: 'In range, not surely',
  out: 'Out of range',
  none: 'No mix can keep these rules',
  working: 'Working it out',
  fault: 'The mix cannot be read',
};

export function Verdict({ view }: { view: FormulationView }) {
  const { state } = view;
  const { head, rest } = headed(view);
  return (
    <section className={`verdict ${state}`} aria-label="Verdict">
      <div className="verdict-words">
        <StateIcon state={state} />
        <p
          aria-live="polite"
          data-testid="verdict"
          data-state={isFit(state) ? 'in' : state}
          data-sure={state === 'sure'}
        >
          <strong>{head}.</strong> {rest}
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

/** The state in its words, and what is to be said about it. */
export function headed({ state, fault, collision, evaluation }: FormulationView): {
  head: string;
  rest: string;
} {
  if (state === 'fault') {
    const where = fault?.field ? `${fault.field}: ` : '';
    return { head: STATE_WORDS.fault, rest: `${where}${fault?.message}` };
  }
  const sentence = (state === 'none' ? collision : evaluation)?.verdict ?? '';
  // The formulation begins with how sure it is: "In range on the average: ...".
  const [opening] = /^(?:No mix[^:.]*|Out of range|[^:]*[Ii]n range[^:]*):\s*/.exec(sentence) ?? [];
  const told = opening === undefined ? sentence : sentence.slice(opening.length);
  const head = isFit(state) && opening ? opening.replace(/:\s*$/, '') : STATE_WORDS[state];
  return { head, rest: capital(told) };
}
