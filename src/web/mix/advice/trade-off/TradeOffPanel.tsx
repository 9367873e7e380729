/** Two goals against each other: every mix that is best in one for what it is in the other, as a line to walk along. */

import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Goal } from '../../../../formulation/advice/frontier.ts';
import type { GoalPoint } from '../../../../formulation/formulation.ts';
import { withHolds } from '../../../../household/reckon/mix/mix-edits.ts';
import { openFoods } from '../../../../household/reckon/mix/shares.ts';
import { words } from '../../../../words/words.ts';
import { AnswerState } from '../../../shared/answer.tsx';
import { Choice } from '../../../shared/Choice.tsx';
import { focusWhenThere } from '../../../shared/focus.ts';
import { SoFar } from '../../../shared/long/SoFar.tsx';
import { useLongAnswer } from '../../../shared/long/useLongAnswer.ts';
import { useMixDraft } from '../../../store/mix-draft.tsx';
import { longAnswers, useReferenceFoods } from '../../../worker/engine.ts';
import type { AdviceProps } from '../advice-props.ts';
import { TradeOffPicture } from './TradeOffPicture.tsx';
import { TradeOffPoint } from './TradeOffPoint.tsx';
import { TradeOffTable } from './TradeOffTable.tsx';
import { presentPoint, type TradeGoal, tradeGoals, tradePoints, unknownIn, usualPair } from './trade-off.ts';
import './trade-off.css';

interface Found {
  readonly a: Goal;
  readonly b: Goal;
  readonly points: readonly GoalPoint[];
  readonly seconds: number;
}

export function TradeOffPanel({ mix, view, nameOf }: AdviceProps) {
  const t = words().tradeOff;
  const { change } = useMixDraft();
  const [asked, setAsked] = useState<readonly [string?, string?]>([]);
  const [chosen, choose] = useState<{ question: string; index: number }>();
  const [taken, setTaken] = useState('');
  const known = useReferenceFoods(mix.problem.foods.flatMap((f) => f.ref ?? []));
  const measured = {
    problem: mix.problem,
    open: openFoods(mix.problem, view.evaluation),
    groups: Object.fromEntries(
      mix.problem.foods.map((f) => [f.id, f.group ?? (f.ref && known.get(f.ref)?.group) ?? undefined]),
    ),
  };
  const goals = tradeGoals(measured);
  const pair = pairOf(goals, asked);
  const question = view.fault ? undefined : { problem: withHolds(mix), a: pair[0].goal, b: pair[1].goal };
  const answer = useLongAnswer<typeof question & object, Found, Found['points']>(
    'trade-off',
    question,
    async ({ problem, a, b }, hearing) => {
      const begun = performance.now();
      const found = await longAnswers.frontier(problem, a, b, hearing);
      if (!found.ok) return found;
      return { ok: true, value: { a, b, points: found.value, seconds: (performance.now() - begun) / 1000 } };
    },
  );

  // An answer to the pair asked before has other axes.
  const fits = answer.value && same(answer.value.a, pair[0].goal) && same(answer.value.b, pair[1].goal);
  const onTheWay = answer.soFar?.found;
  const mixes =
    answer.working || answer.stopped
      ? (onTheWay ?? (fits && answer.value?.points))
      : fits && answer.value?.points;
  const points = mixes ? tradePoints(mixes, pair, measured) : undefined;
  const present = presentPoint(pair, measured, mix.shares, view.evaluation);
  const key = JSON.stringify(question ?? '');
  const index = chosen?.question === key ? chosen.index : undefined;
  const look = (k: number) => {
    choose({ question: key, index: k });
    setTaken('');
  };
  const point = index === undefined ? undefined : points?.[index];
  const unsure = unknownIn(pair, view.evaluation);

  function ask(side: 0 | 1, goal: string) {
    const keys: [string, string] = [pair[0].key, pair[1].key];
    keys[side] = goal;
    setAsked(keys);
    setTaken('');
  }

  return (
    <section className="trade-off" aria-labelledby="trade-off-heading">
      <h2 id="trade-off-heading">{t.heading}</h2>
      <p className="hint">{t.intro}</p>
      <div className="fields trade-goals">
        <Choice
          label={t.one}
          value={pair[0].key}
          options={goals.map((g) => [g.key, g.name])}
          onChange={(goal) => ask(0, goal)}
        />
        <Choice
          label={t.against}
          value={pair[1].key}
          options={goals.filter((g) => g.measures !== pair[0].measures).map((g) => [g.key, g.name])}
          onChange={(goal) => ask(1, goal)}
        />
      </div>
      {!goals.some((g) => g.key === 'cheap') && <p className="hint">{t.price}</p>}
      {unsure.map((g) => (
        <p key={g.key} className="hint">
          {t.missing(g.axis)}
        </p>
      ))}
      <AnswerState {...answer} />
      <SoFar
        {...answer}
        stoppedAt={points && points.length > 0 ? words().long.stopped.points : words().long.stopped.nothing}
      />
      {view.fault && <p>{words().why.unreadable}</p>}
      {points && (
        <div aria-busy={answer.working} className={answer.working ? 'stale' : undefined}>
          {points.length === 0 && <p>{words().why.noMix}</p>}
          {points.length === 1 && (
            <p>
              <strong>{t.noConflict}</strong> {t.noConflictMore}
            </p>
          )}
          {points.length > 1 && (
            <>
              <TradeOffPicture pair={pair} points={points} present={present} chosen={index} choose={look} />
              {!present && <p className="hint">{t.noPlace}</p>}
              {present && view.state === 'out' && <p className="hint">{t.outside}</p>}
            </>
          )}
          {points.length === 1 && index === undefined && (
            <Button className="button" onPress={() => look(0)}>
              {t.look}
            </Button>
          )}
          {point && (
            <TradeOffPoint
              pair={pair}
              point={point}
              present={mix.shares}
              nameOf={nameOf}
              take={() => {
                // The shares keep every rule as they are: nothing has to follow them.
                change((m) => ({ ...m, shares: { ...m.shares, ...point.shares } }));
                focusWhenThere('.trade-point[aria-pressed="true"]');
                setTaken(t.taken);
              }}
            />
          )}
          <p className="trade-taken" aria-live="polite">
            {taken}
          </p>
          {points.length > 1 && <TradeOffTable pair={pair} points={points} chosen={index} choose={look} />}
          {answer.value && !answer.working && points.length > 0 && (
            <p className="hint">
              {(mix.held.length > 0 ? t.countHeld : t.count)(points.length, answer.value.seconds)}
            </p>
          )}
        </div>
      )}
    </section>
  );
}

/** The two goals that were asked, as far as they still can be; else what is worth looking at first. */
function pairOf(
  goals: readonly TradeGoal[],
  [a, b]: readonly [string?, string?],
): readonly [TradeGoal, TradeGoal] {
  const usual = usualPair(goals);
  const first = goals.find((g) => g.key === a) ?? usual[0];
  const apart = (g: TradeGoal) => g.measures !== first.measures;
  const second = goals.find((g) => g.key === b && apart(g)) ?? [usual[1], usual[0]].find(apart)!;
  return [first, second];
}

const same = (a: unknown, b: unknown) => JSON.stringify(a) === JSON.stringify(b);
