/** What a food's row says of the share that was asked of it: a question before other foods go, or what it came to. */
import { useEffect, useRef } from 'react';
import { Button } from 'react-aria-components';
import type { Ingredient, Problem } from '../../../formulation/problem/problem.ts';
import type { Mix } from '../../../household/model.ts';
import { heldShares } from '../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../words/words.ts';
import { useAnswer } from '../../shared/answer.tsx';
import { focusWhenThere } from '../../shared/focus.ts';
import { longAnswers } from '../../worker/engine.ts';
import { askWords, isUnmet, notReachedWords } from './ask-words.ts';
import type { useAsk } from './useAsk.ts';
import './AskNote.css';

interface Props {
  food: Ingredient;
  share: number;
  mix: Mix;
  ask: ReturnType<typeof useAsk>;
  nameOf(id: string): string;
}

/** Above what follows it, so that nothing below moves. */
export function AskNote({ food, share, mix, ask, nameOf }: Props) {
  const { question, asked } = ask;
  const told =
    asked && isUnmet(asked.wanted, asked.got) && Math.abs(share - asked.got) < 0.05 ? asked : undefined;
  return (
    <div className="ask-note" aria-live="polite">
      {(question ?? told) && <Note food={food} mix={mix} ask={ask} told={told} nameOf={nameOf} />}
    </div>
  );
}

function Note({ food, mix, ask, told, nameOf }: Omit<Props, 'share'> & { told: Props['ask']['asked'] }) {
  const t = words().rows.ask;
  const { question } = ask;
  const answer = useAskAnswer(mix, food.id, question?.wanted ?? told?.wanted);
  const notReached = question && notReachedWords(mix.problem, food.id, question.wanted, answer);
  const card = useRef<HTMLDivElement>(null);
  // A row low on the screen has its question below the edge, or under the strip of a phone.
  useEffect(() => {
    card.current?.scrollIntoView({ block: 'nearest' });
  }, []);
  const done = (act: () => void) => {
    act();
    focusWhenThere(`.share-row[data-food="${CSS.escape(food.id)}"] .thumb input`);
  };
  if (question)
    return (
      <div className="ask-card" data-ask="empties" ref={card}>
        <p>{t.empties(question.wanted, question.emptied.map(nameOf))}</p>
        {notReached && <p>{notReached}</p>}
        <div className="button-row">
          <Button className="button small" onPress={() => done(() => void question.take())}>
            {t.takeIt}
          </Button>
          <Button className="quiet-button small" onPress={() => done(ask.leave)}>
            {t.leaveIt}
          </Button>
        </div>
      </div>
    );
  return (
    told && (
      <div className="ask-card" data-ask="short" ref={card}>
        <p>{askWords(mix.problem, food.id, told, answer)}</p>
        <Button className="quiet-button small" onPress={() => done(ask.leave)}>
          {t.close}
        </Button>
      </div>
    )
  );
}

/** What a food has beside what is wanted of it in the best mix; its place is kept while a slider moves. */
export function WantLine({ food, share, mix, best }: Omit<Props, 'ask' | 'nameOf'> & { best: boolean }) {
  const { want } = food;
  if (want === undefined) return null;
  return (
    <p className="want-line">
      {best && isUnmet(want, share) && <WantWords food={food} share={share} mix={mix} want={want} />}
    </p>
  );
}

function WantWords({ food, share, mix, want }: Omit<Props, 'ask' | 'nameOf'> & { want: number }) {
  const answer = useAskAnswer(mix, food.id, want);
  return askWords(mix.problem, food.id, { wanted: want, got: share }, answer);
}

interface AskQuestion {
  readonly problem: Problem;
  readonly shares: Mix['shares'];
  readonly held: Readonly<Record<string, number>>;
  readonly food: string;
  readonly wanted: number;
}

/** What stands in the way, once the mix rests. @param wanted undefined asks nothing */
function useAskAnswer(mix: Mix, food: string, wanted: number | undefined) {
  const { problem, shares } = mix;
  const question: AskQuestion | undefined =
    wanted === undefined ? undefined : { problem, shares, held: heldShares(mix), food, wanted };
  const { value, working } = useAnswer('asked', question, (q, leaving) =>
    longAnswers.askOf([q.problem, q.shares, q.held, q.food, q.wanted], leaving),
  );
  return working ? undefined : value;
}
