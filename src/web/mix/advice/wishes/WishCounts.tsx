/** Rules that count foods, the least weight of a food, and safety against any one food being left: kept in every mix. */
import { useId, useState } from 'react';
import { Button } from 'react-aria-components';
import type { CountRule } from '../../../../formulation/problem/problem.ts';
import type { Mix } from '../../../../household/model.ts';
import { groupName, withoutRule, withProblem } from '../../../../household/reckon/mix/mix-edits.ts';
import {
  addCount,
  countRules,
  groupsOf,
  type PlacedCount,
  replaceCount,
} from '../../../../household/reckon/mix/wishes.ts';
import { words } from '../../../../words/words.ts';
import { Choice } from '../../../shared/Choice.tsx';
import { focusWhenThere } from '../../../shared/focus.ts';
import { NumberInput } from '../../../shared/NumberInput.tsx';
import type { FormulationView } from '../../useFormulation.ts';
import { countFault, countWords } from './count-words.ts';
import '../../nutrients/chip.css';
import '../../../shared/styles/ticks.css';

interface Props {
  mix: Mix;
  view: FormulationView;
  say(notice: string): void;
}

const ANY = '';

export function WishCounts({ mix, view, say }: Props) {
  const t = words().wishes.counts;
  const { problem } = mix;
  const { scale_step_grams: step, batch_grams, least_grams } = problem;
  const rules = countRules(problem);
  const dropOne = useId();
  const setLeast = (grams: number | undefined) =>
    void view.edit((m) => withProblem(m, { least_grams: grams }));

  return (
    <section className="counts" aria-labelledby="counts-heading">
      <h2 id="counts-heading">{t.heading}</h2>
      <p className="hint">{t.hint}</p>
      {rules.length > 0 && (
        <ul className="count-list">
          {rules.map((placed) => (
            <CountRow
              key={placed.index}
              placed={placed}
              mix={mix}
              view={view}
              onRemove={() => {
                void view.edit((m) => withoutRule(m, placed.index));
                say(t.gone(countWords(placed.rule)));
                focusWhenThere('.count-form select');
              }}
            />
          ))}
        </ul>
      )}
      <CountForm mix={mix} view={view} say={say} />
      <div className="count-least">
        <NumberInput
          label={t.leastGrams}
          measure="mass"
          min={0.01}
          max={batch_grams}
          value={least_grams}
          placeholder={t.any}
          onCommit={setLeast}
        />
        {least_grams !== step && step <= batch_grams && (
          <Button className="button small" onPress={() => setLeast(step)}>
            {t.scaleStep(step)}
          </Button>
        )}
        <p className="hint">{t.leastHint(batch_grams)}</p>
      </div>
      <div className="count-drop">
        <label className="tick">
          <input
            type="checkbox"
            checked={problem.drop_one ?? false}
            aria-describedby={dropOne}
            onChange={(e) => {
              const drop_one = e.target.checked || undefined;
              void view.edit((m) => withProblem(m, { drop_one }));
            }}
          />
          <span>{t.dropOne}</span>
        </label>
        <p id={dropOne} className="hint">
          {t.dropOneHint}
        </p>
      </div>
    </section>
  );
}

interface RowProps {
  placed: PlacedCount;
  mix: Mix;
  view: FormulationView;
  onRemove(): void;
}

function CountRow({ placed: { index, rule }, mix, view, onRemove }: RowProps) {
  const [fault, setFault] = useState<string>();
  const t = words().wishes.counts;
  const said = countWords(rule);
  const broken = view.evaluation?.breaches.some((b) => b.pointer.startsWith(`/rules/${index}/`));
  function put(patch: Pick<CountRule, 'min' | 'max'> & { at_least?: number }) {
    const { at_least = rule.count.at_least, ...bounds } = patch;
    const next: CountRule = { ...rule, ...bounds, count: { ...rule.count, at_least } };
    const wrong = countFault(mix.problem, next);
    setFault(wrong && t.notTaken(wrong));
    if (!wrong) void view.edit((m) => replaceCount(m, index, next));
  }
  return (
    <li className="count">
      <fieldset>
        <legend>
          {said} <span className={`chip ${broken ? 'out' : 'in'}`}>{broken ? t.broken : t.kept}</span>
        </legend>
        <div className="count-fields">
          {rule.min !== undefined && (
            <>
              <NumberInput
                label={t.noFewer}
                min={1}
                max={500}
                step={1}
                decimals={0}
                required
                value={rule.min}
                onCommit={(min) => put({ min: min && Math.round(min) })}
              />
              <NumberInput
                label={t.withEach}
                unit="%"
                min={0.01}
                max={100}
                required
                value={rule.count.at_least}
                onCommit={(at_least) => put({ at_least })}
              />
            </>
          )}
          {rule.max !== undefined && (
            <NumberInput
              label={t.noMore}
              min={0}
              max={500}
              step={1}
              decimals={0}
              required
              value={rule.max}
              onCommit={(max) => put({ max: max && Math.round(max) })}
            />
          )}
          <Button className="quiet-button small" aria-label={t.remove(said)} onPress={onRemove}>
            {words().common.remove}
          </Button>
        </div>
        {fault && (
          <p role="alert" className="field-error">
            {fault}
          </p>
        )}
      </fieldset>
    </li>
  );
}

function CountForm({ mix, view, say }: Props) {
  const t = words().wishes.counts;
  const [side, setSide] = useState<'min' | 'max'>('min');
  const [number, setNumber] = useState<number>();
  const [each, setEach] = useState<number>();
  const [group, setGroup] = useState(ANY);
  const [fault, setFault] = useState<string>();
  const error = useId();
  const groups = groupsOf(mix.problem);
  const of = groups.includes(group) ? group : ANY;

  function add() {
    const rule: CountRule = {
      count: {
        ...(of !== ANY && { group: of }),
        ...(side === 'min' && each !== undefined && { at_least: each }),
      },
      ...(number !== undefined && { [side]: Math.round(number) }),
    };
    const wrong = countFault(mix.problem, rule);
    setFault(wrong);
    if (wrong) return;
    void view.edit((m) => addCount(m, rule));
    say(t.added(countWords(rule)));
    setNumber(undefined);
    setEach(undefined);
  }

  return (
    <form
      className="wish-form count-form"
      aria-describedby={fault ? error : undefined}
      onSubmit={(event) => {
        event.preventDefault();
        const wrong = event.currentTarget.querySelector<HTMLElement>('input[aria-invalid="true"]');
        if (wrong) wrong.focus();
        else add();
      }}
    >
      <Choice
        label={t.another}
        value={side}
        options={[
          ['min', t.atLeast],
          ['max', t.atMost],
        ]}
        onChange={setSide}
      />
      <NumberInput
        label={t.howMany}
        min={0}
        max={500}
        step={1}
        decimals={0}
        value={number}
        onCommit={setNumber}
      />
      {side === 'min' && (
        <NumberInput label={t.shareOfEach} unit="%" min={0} max={100} value={each} onCommit={setEach} />
      )}
      <Choice
        label={t.among}
        value={of}
        options={[[ANY, t.allFoods], ...groups.map((g): [string, string] => [g, groupName(g)])]}
        onChange={setGroup}
      />
      <Button type="submit" className="button">
        {t.add}
      </Button>
      {fault && (
        <p id={error} role="alert" className="field-error">
          {fault}
        </p>
      )}
    </form>
  );
}
