/** Drying: runs on the trays, checks in time, and the moisture that the scale tells. */

import { lotsToDry, runLines } from '../../household/reckon/drying/drying-runs.ts';
import { words } from '../../words/words.ts';
import { useNow } from '../shared/hooks/now.ts';
import { linkTo } from '../shared/route.ts';
import { Contained } from '../shared/trouble/Contained.tsx';
import { useKitchen } from '../store/kitchen.ts';
import { useMixDraft } from '../store/mix-draft.tsx';
import { checksDue } from './checks-due.ts';
import { DryerSettings } from './DryerSettings.tsx';
import { PlanRun } from './PlanRun.tsx';
import { RunList } from './RunList.tsx';
import { RunPage } from './RunPage.tsx';
import './drying.css';

const DRYER = 'dryer';

/** @param shown id of a run, or of a fresh lot to plan a run for; undefined for all */
export function DryingScreen({ shown }: { shown: string | undefined }) {
  const { title, screen: t, page } = words().drying;
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
          <h2 tabIndex={-1}>{t.yourDryer}</h2>
          <DryerSettings />
        </article>
      );
    if (shown !== undefined)
      return (
        <article>
          <h2>{t.notHere}</h2>
          <p>{t.notHereWhy}</p>
        </article>
      );
    if (open) return <RunPage key={open.run.id} line={open} now={now} />;
    if (fresh[0]) return <PlanRun key={fresh[0].lot.id} left={fresh[0]} />;
    return (
      <article>
        <h2 tabIndex={-1}>{t.yourDryer}</h2>
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
      <section className="finder" aria-label={t.runs}>
        <h1 tabIndex={-1}>{title}</h1>
        <RunList runs={runs} fresh={fresh} shown={shown} now={now} />
        <section>
          <h2>{t.dryer}</h2>
          <ul className="food-list">
            <li>
              <a href={linkTo('drying', DRYER)} aria-current={shown === DRYER ? 'true' : undefined}>
                <span>{t.yourDryer}</span>
                <small>
                  {dryer
                    ? t.dryerIs(page[dryer.device], dryer.trays, dryer.trayArea, dryer.celsius)
                    : t.dryerNotSaid}
                </small>
              </a>
            </li>
          </ul>
        </section>
      </section>
      <section className="detail" aria-label={t.run}>
        <a className="back" href={linkTo('drying')}>
          {t.back}
        </a>
        <Contained what={t.thisDrying} of={line?.run ?? left?.lot}>
          {detail()}
        </Contained>
      </section>
    </main>
  );
}
