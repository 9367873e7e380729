/** How long each kind of step takes, with what is usual beside it. */
import { SHORTEST_DAYS, STEP_DAYS, type StepKind } from '../../kitchen/calendar/step-days.ts';
import { words } from '../../words/words.ts';
import { NumberInput } from '../shared/NumberInput.tsx';
import { useKitchen } from '../store/kitchen.ts';

const KINDS: readonly StepKind[] = ['buy', 'freeze', 'thaw', 'dry', 'weigh', 'change-over'];

export function DaysFields() {
  const { kitchen, change } = useKitchen();
  const { calendar, kitchen: practice } = words();
  const t = calendar.lengths;
  const own = kitchen.stepDays ?? {};

  /** Emptied, or as usual: nothing of its own is kept. */
  function keep(kind: StepKind, days: number | undefined) {
    const { [kind]: _, ...rest } = own;
    const next = days === undefined || days === STEP_DAYS[kind] ? rest : { ...rest, [kind]: days };
    change({ stepDays: Object.keys(next).length > 0 ? next : undefined });
  }

  const short = (['freeze', 'thaw'] as const).filter((k) => (own[k] ?? STEP_DAYS[k]) < SHORTEST_DAYS[k]);
  return (
    <details className="cal-lengths">
      <summary>{t.title}</summary>
      <p className="hint">{t.about}</p>
      <div className="fields">
        {KINDS.map((kind) => (
          <NumberInput
            key={kind}
            label={t[kind]}
            unit={t.unit}
            min={kind === 'freeze' || kind === 'thaw' ? 1 : 0}
            max={366}
            step={1}
            decimals={0}
            value={own[kind] ?? STEP_DAYS[kind]}
            onCommit={(days) => keep(kind, days === undefined ? undefined : Math.round(days))}
            hint={practice.stepPractice[kind]}
          />
        ))}
      </div>
      {short.length > 0 && <p className="notice-line">{practice.shortTreatment}</p>}
    </details>
  );
}
