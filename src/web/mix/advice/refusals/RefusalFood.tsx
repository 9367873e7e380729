/** One food of the mix: what happens when it is left, who refuses it, and what can take its place. */

import { useId } from 'react';
import { Button } from 'react-aria-components';
import type { Swap } from '../../../../formulation/advice/substitutes.ts';
import type { Leaving } from '../../../../formulation/explain/drop-one.ts';
import type { Problem } from '../../../../formulation/problem/problem.ts';
import type { Animal } from '../../../../household/model.ts';
import { withSwap } from '../../../../household/reckon/mix/swaps.ts';
import { words } from '../../../../words/words.ts';
import { AnswerState, useAnswer } from '../../../shared/answer.tsx';
import { useMixDraft } from '../../../store/mix-draft.tsx';
import { longAnswers } from '../../../worker/engine.ts';
import type { FormulationView } from '../../useFormulation.ts';
import { breachWords, shareWords } from './swap-words.ts';

/** Most swaps shown for a food: so many with the keeper's own foods, and as many with foods of the tables. */
const PER_FOOD = 4;

interface Props {
  leaving: Leaving;
  name: string;
  open: boolean;
  toggle(): void;
  /** What swaps are worked out for: foods that are held keep their shares. */
  question: { readonly problem: Problem; readonly shares: Readonly<Record<string, number>> };
  held: readonly string[];
  /** Whether `leaving` is that of the mix before its last change. */
  stale: boolean;
  /** The animals that the mix is made for. */
  animals: readonly Animal[];
  refuse(animal: Animal): void;
  view: FormulationView;
  nameOf(id: string): string;
  /** Called once a swap is made, with what says so. */
  swapped(said: string): void;
}

export function RefusalFood(props: Props) {
  const t = words().refusals.food;
  const { leaving, name, open, toggle, question, stale, animals, refuse } = props;
  const panel = useId();
  const { breaches } = leaving;
  const wrong = breachWords(question.problem, breaches);
  return (
    <li className="leaving-food" data-food={leaving.food} data-safe={breaches.length === 0}>
      <Button
        className="leaving-head"
        aria-expanded={open}
        aria-controls={panel}
        aria-label={
          breaches.length === 0 ? t.spokenSafe(name, leaving.share) : t.spoken(name, leaving.share, wrong)
        }
        onPress={toggle}
      >
        <span className="leaving-name">
          {name} <small>{t.share(leaving.share)}</small>
        </span>
        <span className={`leaving-mark ${breaches.length === 0 ? 'fine' : 'breaks'}`}>
          {breaches.length === 0 ? t.mayBeLeft : t.breaks(wrong)}
        </span>
      </Button>
      <div id={panel} hidden={!open} className="leaving-more">
        {open && (
          <>
            {breaches.length === 0 ? (
              <p>{t.fine}</p>
            ) : (
              <ul className="leaving-breaches">
                {breaches.map((b) => (
                  <li key={b.pointer}>{b.sentence}</li>
                ))}
              </ul>
            )}
            <Substitutes {...props} />
            {animals.length > 0 && (
              <div className="button-row">
                {animals.map((a) => (
                  <Button key={a.id} className="button small" isDisabled={stale} onPress={() => refuse(a)}>
                    {t.refusesThis(a.name)}
                  </Button>
                ))}
                <small>{t.leaves(animals.length)}</small>
              </div>
            )}
          </>
        )}
      </div>
    </li>
  );
}

function Substitutes({ leaving, name, question, held, view, nameOf, swapped }: Props) {
  const t = words().refusals.swap;
  const { change } = useMixDraft();
  const food = leaving.food;
  const isHeld = held.includes(food);
  const asked = useAnswer('substitutes', isHeld ? undefined : { ...question, food }, (q, leaving) =>
    longAnswers.substitutes([q.problem, q.shares, { foods: [q.food], perFood: PER_FOOD }], leaving),
  );
  // The answer before was perhaps that of another food.
  const found = asked.value?.find((s) => s.food === food);
  const counted = question.problem.rules.some((r) => 'count' in r);
  const nameOfSwap = (swap: Swap) => (swap.id === undefined ? swap.name : nameOf(swap.id));

  function swap(other: Swap) {
    const next = (m: Parameters<typeof withSwap>[0]) => withSwap(m, question.shares, food, other);
    // Swaps keep every rule but those that count foods; where there are such, the mix goes on to the nearest in range.
    if (counted) void view.edit(next, `swap ${food}`);
    else change(next);
    swapped(t.done(name, nameOfSwap(other)));
  }

  if (isHeld) return <p className="hint">{t.heldHint}</p>;
  return (
    <>
      <div className="asked-head">
        <h3>{t.heading}</h3>
        <AnswerState {...asked} />
      </div>
      {found && found.swaps.length === 0 && <p>{found.sentence}</p>}
      {held.length > 0 && <p className="hint">{t.othersHeld}</p>}
      <ul className="swap-list">
        {found?.swaps.map((s) => (
          <li key={s.id ?? s.ref}>
            <span className="swap-words">
              {nameOfSwap(s)} <span className="tag">{originOf(s)}</span>
              <small>
                {s.inMix ? t.further(shareWords(s), s.becomes) : shareWords(s)}
                {s.unsure.length > 0 && `; ${t.unsure}`}
              </small>
            </span>
            <Button
              className="button small"
              isDisabled={asked.working}
              aria-label={t.swapOf(name, nameOfSwap(s))}
              onPress={() => swap(s)}
            >
              {t.swap}
            </Button>
          </li>
        ))}
      </ul>
    </>
  );
}

function originOf(swap: Swap): string {
  const t = words().refusals.swap;
  if (swap.inMix) return t.inMix;
  return swap.id === undefined ? t.fromTables : t.listed;
}
