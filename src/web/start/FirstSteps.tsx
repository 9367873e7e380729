/** From nothing to a first mix: your animal, your pellet, your foods, each with a tick once it is there. */
import { type ReactNode, useState } from 'react';
import { Button } from 'react-aria-components';
import type { FirstSteps as Steps } from '../../household/reckon/first-steps.ts';
import { words } from '../../words/words.ts';
import { linkTo } from '../shared/route.ts';
import { AnimalStep } from './AnimalStep.tsx';
import { ExampleNote } from './ExampleNote.tsx';
import { FoodsStep } from './FoodsStep.tsx';
import { PelletStep } from './PelletStep.tsx';
import { useOwnMix } from './useOwnMix.ts';
import './start.css';

/** @param steps how far the household has come on its way to a first mix of its own */
export function FirstSteps({ steps }: { steps: Steps }) {
  const t = words().start;
  const own = useOwnMix();
  const [opened, setOpened] = useState<string>();

  const names = steps.animals.map((a) => a.name);
  const beside = own.mix?.problem.beside.map((b) => b.name ?? b.id) ?? [];
  const list: readonly {
    key: string;
    done: boolean;
    title: string;
    said: string;
    form: ReactNode;
    change: readonly string[];
  }[] = [
    {
      key: 'animal',
      done: names.length > 0,
      title: t.animal.title,
      said: t.animal.done(names, steps.animals[0]?.dailyGrams),
      form: <AnimalStep own={own} />,
      change: ['animals'],
    },
    {
      key: 'pellet',
      done: steps.pellet,
      title: t.pellet.title,
      said: t.pellet.done(beside),
      form: <PelletStep own={own} />,
      change: ['foods'],
    },
    {
      key: 'foods',
      done: steps.made,
      title: t.foods.title,
      said: t.foods.count(own.mix?.problem.foods.length ?? 0),
      form: <FoodsStep own={own} />,
      change: ['mix'],
    },
  ];
  const now = list.find((s) => s.key === opened && !s.done) ?? list.find((s) => !s.done);
  return (
    <section className="start" aria-label={t.title}>
      <p className="start-lead">{t.lead}</p>
      <ol className="start-steps">
        {list.map((step, i) => (
          <li key={step.key} className={`start-step ${step.done ? 'done' : ''} ${step === now ? 'now' : ''}`}>
            <div className="start-head">
              <span className="start-tick" aria-hidden="true">
                {step.done ? '✓' : i + 1}
              </span>
              <h2 tabIndex={-1}>
                {step.title}
                {step.done && <span className="sr-only"> {t.isDone}</span>}
              </h2>
              {step.done && <span className="start-said">{step.said}</span>}
              {step.done ? (
                <a href={linkTo(...step.change)} aria-label={t.changeStep(step.title)}>
                  {words().common.change}
                </a>
              ) : (
                step !== now && (
                  <Button className="quiet-button small" onPress={() => setOpened(step.key)}>
                    {t.doThisNow}
                  </Button>
                )
              )}
            </div>
            {step === now && step.form}
          </li>
        ))}
      </ol>
      <ExampleNote steps={steps} />
    </section>
  );
}
