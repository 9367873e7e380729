/** The plan of a change-over: picture, table, reasons, what to watch; on the screen and by itself on paper. */
import { useEffect } from 'react';
import { Button } from 'react-aria-components';
import { createPortal } from 'react-dom';
import { capital } from '../../../../formulation/explain/sentences.ts';
import { dayInWords } from '../../../../kitchen/days.ts';
import type { ChangeOver } from '../../../../kitchen/feeding/change-over.ts';
import { ChangeOverPicture } from './ChangeOverPicture.tsx';
import { type PlanColumn, STANDINGS, shortDay, standingOf } from './plan-columns.ts';

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
  const both = columns.find((c) => c.both);
  const last = plan.days.at(-1)?.date;

  function print() {
    document.body.classList.add(PRINTING);
    window.print();
  }

  return (
    <div className="change-plan" aria-busy={stale}>
      <p data-testid="change-sentence">
        <strong>{plan.sentence}</strong> {last && `The change is done on ${dayInWords(last)}.`}
      </p>
      {plan.days.some((d) => standingOf(d) === 'near') && (
        <p className="hint">A scale with a finer step keeps to the plan more closely.</p>
      )}
      {both && (
        <p className="hint">
          {both.name} is the present food and is fed beside the mix as well; it is weighed as one.
        </p>
      )}
      <ChangeOverPicture days={plan.days} columns={columns} />
      <Statements title="Why days are out of range" list={plan.reasons.map((r) => r.sentence)} />
      <Statements title="Not checked" list={plan.unchecked.map((s) => s.sentence)} />
      <PlanTable plan={plan} columns={columns} daily={daily} ticks={false} />
      <Button className="button" isDisabled={stale} onPress={print}>
        Print the plan
      </Button>
      <Cautions plan={plan} />
      {createPortal(
        <div className="plan-sheet" aria-hidden="true">
          <h1>{title}</h1>
          <p>{plan.sentence}</p>
          <PlanTable plan={plan} columns={columns} daily={daily} ticks />
          <Statements title="Not checked" list={plan.unchecked.map((s) => s.sentence)} />
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
  const { plan, columns, daily, ticks } = props;
  return (
    <div className="table-scroll">
      <table className="plan-table">
        <caption>Grams to weigh out each day, {daily} g in all</caption>
        <thead>
          <tr>
            <th scope="col">Day</th>
            {columns.map((c) => (
              <th key={c.id} scope="col">
                {c.name}
              </th>
            ))}
            <th scope="col">Range</th>
            {ticks && <th scope="col">Fed</th>}
          </tr>
        </thead>
        <tbody>
          {plan.days.map((d) => (
            <tr key={d.day} data-day={d.day} data-date={d.date}>
              <th scope="row">
                <span className="plan-day">{d.day}</span> {d.date && shortDay(d.date)}
              </th>
              {columns.map((c) => (
                <td key={c.id}>{c.grams(d)} g</td>
              ))}
              <td className={standingOf(d)}>
                {STANDINGS[standingOf(d)].mark} {STANDINGS[standingOf(d)].brief}
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
      <h3>What to watch</h3>
      <ul className="sharing-list">
        {plan.cautions.map((c) => (
          <li key={c.id}>{c.sentence}</li>
        ))}
      </ul>
      <p className="hint">{sources.map(capital).join('; ')}.</p>
    </>
  );
}
