/** What stands out in its weights, in plain words: what changed, since when, and how soon to see a vet. */
import type { SpeciesKind } from '../../../care/animal/species.ts';
import { LONGEST_GESTATION } from '../../../care/figures/growth.ts';
import { GOLDEN, WINTER_WHITE } from '../../../care/figures/season.ts';
import type { ExpectedChange, WeightAlert, WeightStory } from '../../../care/weight/model.ts';
import { sourceWords } from '../../../foods/source-words.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { alertWords, falseAlarmWords } from './weight-words.ts';

/** Of so few weighings it cannot be said that nothing stands out. */
const FEW = 5;

export function Alerts(props: { name: string; kind: SpeciesKind; story: WeightStory; day: Day }) {
  const { name, kind, story, day } = props;
  const t = words().bodyWeight;
  const { alerts, expected } = story;
  const source = expected && sourceOf(expected, kind);
  const doubt = story.points.at(-1)?.unlikely;
  const counted = story.points.filter((p) => !p.unlikely).length;
  // While a question is open, nobody can say that all is well.
  const quiet = doubt ? t.alerts.doubt : counted < FEW ? t.alerts.few : t.alerts.none;
  if (counted === 0 && !doubt) return null;
  return (
    <section className="weight-alerts" aria-label={t.alerts.title}>
      <h3>{t.alerts.title}</h3>
      {(['loss', 'gain'] as const).map((way) => (
        <Change key={way} name={name} alerts={alerts.filter((a) => a.way === way)} day={day} />
      ))}
      {alerts.length === 0 && <p>{quiet}</p>}
      {expected && (
        <p className="notice-line">
          <strong>{t.expected.title}:</strong> {t.expected[expected](name)} {t.expected.anyway}
          {source && (
            <small className="expected-source">{words().shared.caution.source(sourceWords(source))}</small>
          )}
        </p>
      )}
    </section>
  );
}

/** Where it stands that such a change is to be expected; undefined where nothing is cited. */
function sourceOf(expected: ExpectedChange, kind: SpeciesKind): string | undefined {
  if (expected === 'autumn' || expected === 'spring') return WINTER_WHITE.source;
  if (expected === 'short days') return GOLDEN.source;
  return expected === 'pregnancy' ? LONGEST_GESTATION[kind]?.source : undefined;
}

/** One change of weight, as the most pressing rule tells it; what the others say of it stands behind "more". */
function Change(props: { name: string; alerts: readonly WeightAlert[]; day: Day }) {
  const { name, alerts, day } = props;
  const t = words().bodyWeight.alerts;
  const [first, ...others] = alerts;
  if (!first) return null;
  const { way, vet } = first;
  return (
    <div className={`caution-card ${vet === 'next visit' ? '' : 'never'}`}>
      <p>
        <strong>{t.vet[vet]}.</strong> <AlertSentences name={name} alert={first} day={day} />
      </p>
      <p>
        {vet === 'today' && way === 'loss' ? `${t.weighAgain} ` : ''}
        {way === 'gain' ? t.gain : t.look}
      </p>
      <details>
        <summary>{t.moreCertain}</summary>
        <p className="hint">
          {t.noDiagnosis} {falseAlarmWords(first.falseAlarmsAYear)}
        </p>
        {others.map((alert) => (
          <p key={alert.rule} className="hint">
            {t.foundToo} <AlertSentences name={name} alert={alert} day={day} />{' '}
            {falseAlarmWords(alert.falseAlarmsAYear)}
          </p>
        ))}
      </details>
    </div>
  );
}

function AlertSentences({ name, alert, day }: { name: string; alert: WeightAlert; day: Day }) {
  const { bodyWeight, figures: f } = words();
  const t = bodyWeight.alerts;
  const { from, to, since, on, rule } = alert;
  return (
    <>
      {alertWords(name, alert)}{' '}
      {rule === 'growth' ? t.expectedIs(from, to, f.day(on, day)) : t.fromTo(from, to, f.day(since, day))}
    </>
  );
}
