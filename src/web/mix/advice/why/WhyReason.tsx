/** One bound at which the balanced mix stands, with the way to let it go. */
import { Button } from 'react-aria-components';
import { pointerSteps } from '../../../../formulation/problem/json-pointer.ts';
import type { Reason } from '../../../../formulation/problem/result.ts';
import type { Mix } from '../../../../household/model.ts';
import { hold } from '../../../../household/reckon/mix/mix-edits.ts';
import { isLimitOfTarget, withChanges } from '../../../../household/reckon/mix/own-limits.ts';
import { today } from '../../../shared/today.ts';
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
  const { reason, mix, view, keptRules, nameOf } = props;
  const { pointer, to } = reason;
  const [list, row] = pointerSteps(pointer);
  const food = list === 'foods' ? mix.problem.foods[Number(row)] : undefined;
  const change = (next: (m: Mix) => Mix) => void view.edit(next, 'let go').then(() => view.balance());

  if (food && mix.held.includes(food.id)) {
    const name = nameOf(food.id);
    return (
      <li>
        <span>
          {name} is held at {reason.from.toFixed(1)} %.
          {reason.free !== undefined &&
            ` Let go, it would come to rest at ${reason.free.toFixed(1)} %, and the mix would be better.`}
        </span>
        <Button
          className="button"
          aria-label={`Let go of ${name}`}
          onPress={() => change((m) => hold(m, food.id, false))}
        >
          Let go
        </Button>
      </li>
    );
  }
  const foreign = list === 'rules' && Number(row) >= keptRules;
  const changes = to === undefined ? [] : [{ pointer, from: reason.from, to }];
  const button = { label: letGoWords(reason), spoken: `${letGoWords(reason)}: ${subject(reason)}` };
  return (
    <li>
      <span>
        {reason.sentence}
        {foreign && (
          <small>
            {' '}
            This rule comes from the target of another animal of this mix; it is changed there, under Targets.
          </small>
        )}
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

/** "Let it go to 7.5 %", with the unit that the sentence gives it. */
function letGoWords({ sentence, to }: Reason): string {
  return `Let it go to ${/Letting it go to (.+?) would /.exec(sentence)?.[1] ?? to}`;
}

/** What a reason is about, from its sentence: "Fat of the ration". */
function subject({ sentence }: Reason): string {
  const [about = sentence] = sentence.split(' stands at ');
  return about;
}
