/** May this be fed, and if not, why: in three states told by word and shape, with what would settle the middle one. */
import { memo } from 'react';
import { Button } from 'react-aria-components';
import { type Settle, verdictOf, whyNone } from '../../formulation/explain/verdict.ts';
import type { Mix } from '../../household/model.ts';
import { words } from '../../words/words.ts';
import { linkTo } from '../shared/route.ts';
import { Sentence } from '../shared/words/Sentence.tsx';
import { BestSoFar } from './BestSoFar.tsx';
import { StateIcon } from './icons.tsx';
import { type FormulationView, isFit, type MixState } from './useFormulation.ts';
import './Verdict.css';

/** A state where there is room for a few words only. */
export function stateWords(state: MixState): string {
  return words().verdict.state[state];
}

export function Verdict({ view, mix }: { view: FormulationView; mix: Mix }) {
  const { state } = view;
  const { head, rest, settle } = headed(view);
  const t = words().verdict;
  return (
    <section className={`verdict ${state}`} aria-label={t.title}>
      <div className="verdict-words">
        <StateIcon state={state} />
        <p
          aria-live="polite"
          data-testid="verdict"
          data-state={isFit(state) ? 'in' : state}
          data-sure={state === 'sure'}
        >
          <strong>{head}.</strong> {rest}
          {settle && <SettleLine settle={settle} mix={mix} />}
        </p>
      </div>
      <MakeFit balance={view.balance} isDisabled={state === 'fault'} />
      <p className="caution">{t.caution}</p>
      <div className="verdict-foot">
        <p className={view.soFar ? 'sr-only' : 'notice'} aria-live="polite">
          {view.working ? t.working : view.notice}
        </p>
        {view.working && !view.soFar && (
          <Button className="quiet-button small" onPress={view.stop}>
            {t.stop}
          </Button>
        )}
      </div>
      <BestSoFar view={view} objective={mix.problem.objective} />
    </section>
  );
}

/** Stays as it is while a slider moves. */
const MakeFit = memo(function MakeFit(props: { balance(): Promise<void>; isDisabled: boolean }) {
  return (
    <Button className="big-button" onPress={() => void props.balance()} isDisabled={props.isDisabled}>
      {words().verdict.makeFit}
    </Button>
  );
});

/** The one figure that would settle it, with the way to it. */
function SettleLine({ settle, mix }: { settle: Settle; mix: Mix }) {
  const { foods, beside } = mix.problem;
  const food = [...beside, ...foods].find((f) => f.id === settle.food);
  const page = linkTo('foods', food?.ref ?? settle.food, settle.nutrient);
  return (
    <span className="verdict-settle">
      {' '}
      <Sentence of={settle.sentence} with={{ food: (text) => <a href={page}>{text}</a> }} />
    </span>
  );
}

/** The state in its words, what is to be said about it, and what would settle it. */
export function headed({ state, fault, collision, evaluation }: FormulationView): {
  readonly head: string;
  readonly rest: string;
  readonly settle?: Settle;
} {
  const head = stateWords(state);
  if (state === 'fault') {
    const where = fault?.field ? `${fault.field}: ` : '';
    return { head, rest: `${where}${fault?.message}` };
  }
  if (state === 'none') return { head, rest: collision ? whyNone(collision) : '' };
  return evaluation ? verdictOf(evaluation) : { head, rest: '' };
}
