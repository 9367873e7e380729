import { SHORTEST_DAYS, STEP_DAYS, type StepKind } from '../../kitchen/calendar/step-days.ts';
import { NumberInput } from '../shared/NumberInput.tsx';
import { useKitchen } from '../store/kitchen.ts';

const PRACTICE = '(common practice, no source)';
const FIELDS: readonly (readonly [StepKind, string, string])[] = [
  ['buy', 'Buying', '0: into the freezer or the oven on the day it is bought.'],
  ['freeze', 'Freezing, each time', `3 to 4 days ${PRACTICE}; big bags take longer.`],
  ['thaw', 'Thawing, each time', `3 to 4 days ${PRACTICE}.`],
  ['dry', 'Drying', `About 6 hours in a fan oven, so one day ${PRACTICE}.`],
  ['weigh', 'Weighing out', 'One day.'],
  ['change-over', 'Changing over', `10 to 14 days ${PRACTICE}; 0 where the animals know all of it.`],
];

export function DaysFields() {
  const { kitchen, change } = useKitchen();
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
      <summary>How long each step takes</summary>
      <p className="hint">
        For what has no days yet. A lot that has its days in the freezer keeps their length until the cold is
        planned anew; a big bag is given more.
      </p>
      <div className="fields">
        {FIELDS.map(([kind, label, hint]) => (
          <NumberInput
            key={kind}
            label={label}
            unit="days"
            min={kind === 'freeze' || kind === 'thaw' ? 1 : 0}
            max={366}
            step={1}
            decimals={0}
            value={own[kind] ?? STEP_DAYS[kind]}
            onCommit={(days) => keep(kind, days === undefined ? undefined : Math.round(days))}
            hint={hint}
          />
        ))}
      </div>
      {short.length > 0 && (
        <p className="notice-line">
          Less than 3 days is shorter than common practice: eggs inside the kernels may live through it.
        </p>
      )}
    </details>
  );
}
