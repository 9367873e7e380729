/** The plan of a change-over: picture, table, reasons, what to watch; on the screen and by itself on paper. */

import { useEffect } from 'react';
import { Button } from 'react-aria-components';
import { createPortal } from 'react-dom';
import { capital } from '../../../../formulation/explain/sentences.ts';
import type { ChangeOver } from '../../../../kitchen/feeding/change-over.ts';
import { words } from '../../../../words/words.ts';
import { ChangeOverPicture } from './ChangeOverPicture.tsx';
import { type PlanColumn, STANDINGS, standingOf } from './plan-columns.ts';

/** On the page's body while only the plan goes on paper; see change-over.css. */
const PRINTING = 'printing-plan';

interface Props {
  plan: ChangeOver;
  columns: readonly PlanColumn[];
  title: string;
  daily: number;
  /** Whether a newer plan is on its way. */
  stale: boolean;
}

export function ChangeOverPlanView({ plan, columns, title, daily, stale }: Props) {
  useEffect(() => {
    const done = () => document.body.classList.remove(PRINTING);
    window.addEventListener('afterprint', done);
    return () => {
      window.removeEventListener('afterprint', done);
      done();
    };
  }, []);
  const t = words().changeOver.plan;
  const both = columns.find((c) => c.both);
  const last = plan.days.at(-1)?.date;

  function print() {
    document.body.classList.add(PRINTING);
    window.print();
  }

  return (
    <div className="change-plan" aria-busy={stale}>
      <p data-testid="change-sentence">
        <strong>{plan.sentence}</strong> {last && t.done(last)}
      </p>
      {plan.days.some((d) => standingOf(d) === 'near') && <p className="hint">{t.finer}</p>}
      {both && <p className="hint">{t.both(both.name)}</p>}
      <ChangeOverPicture days={plan.days} columns={columns} />
      <Statements title={t.why} list={plan.reasons.map((r) => r.sentence)} />
      <Statements title={t.unchecked} list={plan.unchecked.map((s) => s.sentence)} />
      <PlanTable plan={plan} columns={columns} daily={daily} ticks={false} />
      <Button className="button" isDisabled={stale} onPress={print}>
        {t.print}
      </Button>
      <Cautions plan={plan} />
      {createPortal(
        <div className="plan-sheet" aria-hidden="true">
          <h1>{title}</h1>
          <p>{plan.sentence}</p>
          <PlanTable plan={plan} columns={columns} daily={daily} ticks />
          <Statements title={t.unchecked} list={plan.unchecked.map((s) => s.sentence)} />
          <Cautions plan={plan} />
        </div>,
        document.body,
      )}
    </div>
  );
}

function Statements({ title, list }: { title: string; list: readonly string[] }) {
  if (list.length === 0) return null;
  return (
    <>
      <h3>{title}</h3>
      <ul className="sharing-list">
        {list.map((s) => (
          <li key={s}>{s}</li>
        ))}
      </ul>
    </>
  );
}

function PlanTable(props: {
  plan: ChangeOver;
  columns: readonly PlanColumn[];
  daily: number;
  /** Whether each day has a box to tick on paper. */
  ticks: boolean;
}) {
  const t = words().changeOver;
  const { grams, number, shortDay } = words().figures;
  const { plan, columns, daily, ticks } = props;
  return (
    <div className="table-scroll">
      <table className="plan-table">
        <caption>{t.plan.caption(daily)}</caption>
        <thead>
          <tr>
            <th scope="col">{t.plan.day}</th>
            {columns.map((c) => (
              <th key={c.id} scope="col">
                {c.name}
              </th>
            ))}
            <th scope="col">{t.plan.range}</th>
            {ticks && <th scope="col">{t.plan.fed}</th>}
          </tr>
        </thead>
        <tbody>
          {plan.days.map((d) => (
            <tr key={d.day} data-day={d.day} data-date={d.date}>
              <th scope="row">
                <span className="plan-day">{number(d.day)}</span> {d.date && shortDay(d.date)}
              </th>
              {columns.map((c) => (
                <td key={c.id}>{grams(c.grams(d))}</td>
              ))}
              <td className={standingOf(d)}>
                {STANDINGS[standingOf(d)]} {t.standing[standingOf(d)].brief}
              </td>
              {ticks && <td>☐</td>}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Cautions({ plan }: { plan: ChangeOver }) {
  const sources = [...new Set(plan.cautions.map((c) => c.source))];
  return (
    <>
      <h3>{words().changeOver.plan.watch}</h3>
      <ul className="sharing-list">
        {plan.cautions.map((c) => (
          <li key={c.id}>{c.sentence}</li>
        ))}
      </ul>
      <p className="hint">{sources.map(capital).join('; ')}.</p>
    </>
  );
}
