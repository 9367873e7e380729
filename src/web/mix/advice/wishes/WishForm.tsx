/** Adds a wish: one of a few, or less or more of a nutrient, a group or a food. */
import { useId, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Aim } from '../../../../formulation/problem/problem.ts';
import { groupName } from '../../../../household/reckon/mix/mix-edits.ts';
import { addAim, measurable } from '../../../../household/reckon/mix/wishes.ts';
import { nutrient } from '../../../../nutrition/nutrients.ts';
import { words } from '../../../../words/words.ts';
import { Choice } from '../../../shared/Choice.tsx';
import type { AdviceProps } from '../advice-props.ts';
import { aimFault, aimWords, measuredFrom, SIMPLE_AIMS, simpleAimWords } from './wish-words.ts';

export function WishForm({ mix, view, nameOf, say }: AdviceProps & { say(notice: string): void }) {
  const t = words().wishes;
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

  const kinds: [Aim['aim'], string][] = [
    ...SIMPLE_AIMS.map((a): [Aim['aim'], string] => [a, simpleAimWords(a)]),
    ['less', t.lessOf],
    ['more', t.moreOf],
  ];

  function add() {
    const aim: Aim =
      kind === 'less' || kind === 'more' ? { aim: kind, ...measuredFrom(what, on) } : { aim: kind };
    const wrong = aimFault(problem, aim, nameOf);
    setFault(wrong);
    if (wrong) return;
    void view.edit((m) => addAim(m, aim));
    say(t.form.added(aimWords(aim, nameOf), (problem.aims?.length ?? 0) + 1));
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
        label={t.form.kind}
        value={kind}
        options={kinds}
        onChange={(next) => {
          setFault(undefined);
          setKind(next);
        }}
      />
      {measured && (
        <div className="choice">
          <label htmlFor={list}>{t.form.what}</label>
          <select
            id={list}
            value={what}
            onChange={(e) => {
              setFault(undefined);
              setWhat(e.target.value);
            }}
          >
            {choices.ruled.length > 0 && <optgroup label={t.form.ruled}>{nutrients(choices.ruled)}</optgroup>}
            <optgroup label={t.form.other}>{nutrients(choices.other)}</optgroup>
            <optgroup label={t.form.groups}>
              {choices.groups.map((g) => (
                <option key={g} value={`g ${g}`}>
                  {groupName(g)}
                </option>
              ))}
            </optgroup>
            <optgroup label={t.form.foods}>
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
          label={t.form.on}
          value={on}
          options={[
            ['ration', t.form.ration],
            ['mix', t.form.mix],
          ]}
          onChange={setOn}
        />
      )}
      <Button type="submit" className="button">
        {t.form.add}
      </Button>
      {fault && (
        <p id={error} role="alert" className="field-error">
          {fault}
        </p>
      )}
    </form>
  );
}
