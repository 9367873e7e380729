/** One limit at which the best mix stands, with the way to change it. */

import { Button } from 'react-aria-components';
import { pointerSteps } from '../../../../formulation/problem/json-pointer.ts';
import type { Reason } from '../../../../formulation/problem/result.ts';
import type { Mix } from '../../../../household/model.ts';
import { hold } from '../../../../household/reckon/mix/mix-edits.ts';
import { isLimitOfTarget, withChanges } from '../../../../household/reckon/mix/own-limits.ts';
import { words } from '../../../../words/words.ts';
import { today } from '../../../shared/today.ts';
import { limitSubject, limitText, limitUnit } from '../../foods/limit-subject.ts';
import { LimitStep } from '../../limits/LimitStep.tsx';
import type { FormulationView } from '../../useFormulation.ts';

export function WhyReason(props: {
  reason: Reason;
  /** With what its animals bring. */
  mix: Mix;
  view: FormulationView;
  /** So many rules are the mix's own; those after them come from its animals. */
  keptRules: number;
  nameOf(id: string): string;
}) {
  const t = words().why;
  const { reason, mix, view, keptRules, nameOf } = props;
  const { pointer, to } = reason;
  const [list, row] = pointerSteps(pointer);
  const food = list === 'foods' ? mix.problem.foods[Number(row)] : undefined;
  const change = (next: (m: Mix) => Mix) => void view.edit(next, 'letgo').then(() => view.balance());

  if (food && mix.held.includes(food.id)) {
    const name = nameOf(food.id);
    return (
      <li>
        <span>
          {reason.free === undefined ? t.held(name, reason.from) : t.heldFree(name, reason.from, reason.free)}
        </span>
        <Button
          className="button"
          aria-label={t.letGoOf(name)}
          onPress={() => change((m) => hold(m, food.id, false))}
        >
          {t.letGo}
        </Button>
      </li>
    );
  }
  const foreign = list === 'rules' && Number(row) >= keptRules;
  const changes = to === undefined ? [] : [{ pointer, from: reason.from, to }];
  const what = food ? nameOf(food.id) : limitSubject(mix.problem, pointer);
  const goal = limitText(to ?? reason.from, limitUnit(mix.problem, pointer));
  const up = to !== undefined && to > reason.from;
  const label = up ? t.raise(goal) : t.lower(goal);
  const button = {
    label,
    spoken: what === undefined ? label : (up ? t.raiseOf : t.lowerOf)(goal, what),
  };
  return (
    <li>
      <span>
        {reason.sentence}
        {foreign && <small> {t.foreign}</small>}
      </span>
      {to !== undefined &&
        !foreign &&
        (isLimitOfTarget(mix.problem, pointer) ? (
          <LimitStep
            {...button}
            mix={mix}
            change={{ changes }}
            nameOf={nameOf}
            act={(on) => change((m) => withChanges(m, changes, on))}
          />
        ) : (
          <Button
            className="button"
            aria-label={button.spoken}
            onPress={() => change((m) => withChanges(m, changes, today()))}
          >
            {button.label}
          </Button>
        ))}
    </li>
  );
}
