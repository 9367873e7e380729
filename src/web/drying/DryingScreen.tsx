/** Drying: runs on the trays, checks in time, and the moisture that the scale tells. */

import { lotsToDry, runLines } from '../../household/reckon/drying/drying-runs.ts';
import { useNow } from '../shared/hooks/now.ts';
import { linkTo } from '../shared/route.ts';
import { Contained } from '../shared/trouble/Contained.tsx';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { DryerSettings } from './DryerSettings.tsx';
import { PlanRun } from './PlanRun.tsx';
import { RunList } from './RunList.tsx';
import { RunPage } from './RunPage.tsx';
import { checksDue } from './view-model.ts';
import './drying.css';

const DRYER = 'dryer';

/** @param shown id of a run, or of a fresh lot to plan a run for; undefined for all */
export function DryingScreen({ shown }: { shown: string | undefined }) {
  const { house } = useMixDraft();
  const { kitchen } = useKitchen();
  const now = useNow();
  const runs = runLines(house);
  const fresh = lotsToDry(house);
  const dues = checksDue(house, now);
  const line = runs.find((r) => r.run.id === shown);
  const left = fresh.find((l) => l.lot.id === shown);
  // On a wide page something stands beside the list: what dries, else what is to dry.
  const open = runs.find((r) => r.state === 'drying' || r.state === 'weighed');
  const { dryer } = kitchen;

  function detail() {
    if (line) return <RunPage key={line.run.id} line={line} now={now} />;
    if (left) return <PlanRun key={left.lot.id} left={left} />;
    if (shown === DRYER)
      return (
        <article>
          <h2 tabIndex={-1}>Your dryer</h2>
          <DryerSettings />
        </article>
      );
    if (shown !== undefined)
      return (
        <article>
          <h2>Not kept here</h2>
          <p>There is no run or fresh lot of this name any more. It may be used up, or deleted.</p>
        </article>
      );
    if (open) return <RunPage key={open.run.id} line={open} now={now} />;
    if (fresh[0]) return <PlanRun key={fresh[0].lot.id} left={fresh[0]} />;
    return (
      <article>
        <h2 tabIndex={-1}>Your dryer</h2>
        <DryerSettings />
      </article>
    );
  }

  return (
    <main
      id="main"
      className={`foods-screen cupboard-screen dry-screen ${shown === undefined ? '' : 'has-detail'}`}
    >
      <p role="status" className={dues.length > 0 ? 'dry-status' : 'sr-only'}>
        {dues.map((d) => d.words).join('. ')}
      </p>
      <section className="finder" aria-label="Runs">
        <h1 tabIndex={-1}>Drying</h1>
        <RunList runs={runs} fresh={fresh} shown={shown} now={now} />
        <section>
          <h2>Dryer</h2>
          <ul className="food-list">
            <li>
              <a href={linkTo('drying', DRYER)} aria-current={shown === DRYER ? 'true' : undefined}>
                <span>Your dryer</span>
                <small>
                  {dryer
                    ? `${dryer.device === 'oven' ? 'Oven' : 'Dehydrator'}, ${dryer.trays} × ${Number(dryer.trayArea.toFixed(1))} dm², ${dryer.celsius} °C`
                    : 'Not said yet: oven or dehydrator, and its trays'}
                </small>
              </a>
            </li>
          </ul>
        </section>
      </section>
      <section className="detail" aria-label="Run">
        <a className="back" href={linkTo('drying')}>
          ‹ All of drying
        </a>
        <Contained what="This drying" of={line?.run ?? left?.lot}>
          {detail()}
        </Contained>
      </section>
    </main>
  );
}
