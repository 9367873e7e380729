/** Weighings that are kept and look unlikely: each is a question, and counts for nothing until it is answered. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Weighing } from '../../../care/model.ts';
import type { WeightPoint, WeightStory } from '../../../care/weight/model.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { focusWhenThere } from '../../shared/focus.ts';
import { SaidLine } from '../timeline/SaidLine.tsx';
import { useTold } from '../timeline/useTold.ts';
import { WeighingForm } from './WeighingForm.tsx';

export function Doubtful(props: { story: WeightStory; weighings: readonly Weighing[]; day: Day }) {
  const { bodyWeight, figures: f } = words();
  const t = bodyWeight.questions;
  const { said, error, change } = useTold('weighings');
  const [editing, edit] = useState<string>();
  const doubted = props.story.points.filter((p) => p.unlikely).reverse();
  if (doubted.length === 0 && !said) return null;
  const focusHere = () => focusWhenThere('.doubtful h3');
  return (
    <section className="doubtful notice-line" aria-label={t.title}>
      <h3 tabIndex={-1}>{t.title}</h3>
      <ul>
        {doubted.map((point) => {
          const weighing = props.weighings.find((w) => w.id === point.id);
          const on = f.day(point.day, props.day);
          if (!weighing) return null;
          return (
            <li key={point.id}>
              <p>
                {t.of(point.grams, on)} {isLoss(point, props.story) && bodyWeight.ask.rightAlarm}
              </p>
              {editing === point.id ? (
                <WeighingForm
                  weighing={weighing}
                  day={props.day}
                  unlikely={() => undefined}
                  onLeave={() => {
                    edit(undefined);
                    focusHere();
                  }}
                  onKeep={(next) => {
                    change(next, weighing, bodyWeight.list.corrected(next.grams));
                    edit(undefined);
                    focusHere();
                  }}
                />
              ) : (
                <div className="button-row">
                  <Button
                    className="button small"
                    aria-label={t.correct(point.grams, on)}
                    onPress={() => edit(point.id)}
                  >
                    {bodyWeight.ask.correct}
                  </Button>
                  <Button
                    className="quiet-button small"
                    aria-label={t.right(point.grams, on)}
                    onPress={() => {
                      change({ ...weighing, sure: true }, weighing, t.said(point.grams));
                      focusHere();
                    }}
                  >
                    {bodyWeight.ask.right}
                  </Button>
                </div>
              )}
            </li>
          );
        })}
      </ul>
      <SaidLine said={said} error={error} />
    </section>
  );
}

/** Whether it is the newest weighing and lies below the trend: right, it would be a loss of now. */
function isLoss(point: WeightPoint, { points, trend }: WeightStory): boolean {
  const last = trend.at(-1);
  return point === points.at(-1) && last !== undefined && point.grams < last.grams;
}
