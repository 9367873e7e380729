/** Adds a wish: one of a few, or less or more of a nutrient, a group or a food. */
import { useId, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Aim } from '../../../../formulation/problem/problem.ts';
import { groupName } from '../../../../household/reckon/mix/mix-edits.ts';
import { addAim, measurable } from '../../../../household/reckon/mix/wishes.ts';
import { nutrient } from '../../../../nutrition/nutrients.ts';
import { Choice } from '../../../shared/Choice.tsx';
import type { AdviceProps } from '../advice-props.ts';
import { aimFault, aimWords, measuredFrom, SIMPLE_AIMS, type SimpleAim } from './wish-words.ts';

const KINDS: readonly (readonly [Aim['aim'], string])[] = [
  ...(Object.entries(SIMPLE_AIMS) as [SimpleAim, string][]),
  ['less', 'Less of …'],
  ['more', 'More of …'],
];

export function WishForm({ mix, view, nameOf, say }: AdviceProps & { say(notice: string): void }) {
  const { problem } = mix;
  const list = useId();
  const error = useId();
  const [kind, setKind] = useState<Aim['aim']>('liked');
  const choices = measurable(problem);
  const first = choices.ruled[0] ?? choices.other[0];
  const [chosen, setWhat] = useState(`n ${first}`);
  const [on, setOn] = useState<'mix' | 'ration'>(problem.beside.length > 0 ? 'ration' : 'mix');
  const [fault, setFault] = useState<string>();
  const measured = kind === 'less' || kind === 'more';
  // A food or group that has left the mix cannot be wished of any more.
  const gone =
    (chosen.startsWith('f ') && !problem.foods.some((f) => `f ${f.id}` === chosen)) ||
    (chosen.startsWith('g ') && !choices.groups.some((g) => `g ${g}` === chosen));
  const what = gone ? `n ${first}` : chosen;
  const nutrients = (tags: readonly (typeof first & string)[]) =>
    tags.map((t) => (
      <option key={t} value={`n ${t}`}>
        {nutrient(t).name}
      </option>
    ));

  function add() {
    const aim: Aim =
      kind === 'less' || kind === 'more' ? { aim: kind, ...measuredFrom(what, on) } : { aim: kind };
    const wrong = aimFault(problem, aim, nameOf);
    setFault(wrong);
    if (wrong) return;
    void view.edit((m) => addAim(m, aim));
    say(`“${aimWords(aim, nameOf)}” is wish ${(problem.aims?.length ?? 0) + 1}.`);
  }

  return (
    <form
      className="wish-form"
      aria-describedby={fault ? error : undefined}
      onSubmit={(event) => {
        event.preventDefault();
        add();
      }}
    >
      <Choice
        label="Another wish"
        value={kind}
        options={KINDS}
        onChange={(next) => {
          setFault(undefined);
          setKind(next);
        }}
      />
      {measured && (
        <div className="choice">
          <label htmlFor={list}>Of what</label>
          <select
            id={list}
            value={what}
            onChange={(e) => {
              setFault(undefined);
              setWhat(e.target.value);
            }}
          >
            {choices.ruled.length > 0 && (
              <optgroup label="Nutrients with a rule">{nutrients(choices.ruled)}</optgroup>
            )}
            <optgroup label="Other nutrients">{nutrients(choices.other)}</optgroup>
            <optgroup label="Groups">
              {choices.groups.map((g) => (
                <option key={g} value={`g ${g}`}>
                  {groupName(g)}
                </option>
              ))}
            </optgroup>
            <optgroup label="Foods">
              {problem.foods.map((f) => (
                <option key={f.id} value={`f ${f.id}`}>
                  {nameOf(f.id)}
                </option>
              ))}
            </optgroup>
          </select>
        </div>
      )}
      {measured && what.startsWith('n ') && (
        <Choice
          label="Measured in"
          value={on}
          options={[
            ['ration', 'the whole ration'],
            ['mix', 'the mix'],
          ]}
          onChange={setOn}
        />
      )}
      <Button type="submit" className="button">
        Add wish
      </Button>
      {fault && (
        <p id={error} role="alert" className="field-error">
          {fault}
        </p>
      )}
    </form>
  );
}
