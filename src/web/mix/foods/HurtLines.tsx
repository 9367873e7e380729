/** What of the mix can hurt, in one line each above its foods, with the press that mends it. */
import { Button } from 'react-aria-components';
import type { Mix } from '../../../household/model.ts';
import {
  freshFoods,
  homeDried,
  measuredDried,
  withDriedForms,
} from '../../../household/reckon/mix/dry-fresh.ts';
import { withGoneAhead } from '../../../household/reckon/mix/go-ahead.ts';
import { patchFood } from '../../../household/reckon/mix/mix-edits.ts';
import { words } from '../../../words/words.ts';
import { focusWhenThere } from '../../shared/focus.ts';
import { GoAhead } from '../../shared/go-ahead/GoAhead.tsx';
import { today } from '../../shared/today.ts';
import { useKitchen } from '../../store/kitchen.ts';
import { useReferenceFoods } from '../../worker/engine.ts';
import { OwnLimits } from '../limits/OwnLimits.tsx';
import type { FormulationView } from '../useFormulation.ts';
import { listedFoods, neverFed } from './hurts.ts';
import './HurtLines.css';

interface Props {
  /** With what its animals bring. */
  mix: Mix;
  /** As it is kept. */
  kept: Mix;
  view: FormulationView;
  nameOf(id: string): string;
}

export function HurtLines({ mix, kept, view, nameOf }: Props) {
  const t = words().hurts;
  const { day } = words().figures;
  const { problem } = mix;
  const { kitchen, change } = useKitchen();
  const known = useReferenceFoods([
    ...[...problem.foods, ...problem.beside].flatMap((f) => f.ref ?? []),
    ...measuredDried(problem),
  ]);
  const fresh = freshFoods(problem, known);
  const notes = view.evaluation?.cautions ?? view.collision?.cautions ?? [];
  const listed = listedFoods(notes);
  const never = neverFed(notes).filter((id) => !listed.some((l) => l.food === id));
  const own = problem.own_limits ?? [];
  if (fresh.length + listed.length + never.length + own.length === 0) return null;

  function dry() {
    const all = kitchen.driedAtHome ?? [];
    const dried = homeDried(kept, known, t.dried, all);
    void view.edit((m) => withDriedForms(m, known, t.dried), 'dry');
    if (dried.length > all.length) change({ driedAtHome: dried });
    view.say(t.isDried);
    focusWhenThere('.verdict .big-button');
  }

  return (
    <section className="hurts" aria-label={t.all}>
      <ul>
        {fresh.length > 0 && (
          <Line kind="fresh" words={t.fresh(fresh.map((f) => nameOf(f.id)))}>
            <Button className="button small" onPress={dry}>
              {t.dry(fresh.length)}
            </Button>
          </Line>
        )}
        {never.length > 0 && <Line kind="never" words={t.never(never.map(nameOf))} />}
        {listed.map(({ food, found, cautions, beside, gone }) => {
          const override = problem.foods.find((f) => f.id === food)?.override;
          if (beside) return <Line key={food} kind="listed" words={t.beside(nameOf(food), found)} />;
          if (gone && override)
            return (
              <Line
                key={food}
                kind="gone"
                words={t.gone(nameOf(food), found, day(override.on), override.note)}
              >
                <Button
                  className="quiet-button small"
                  onPress={() => void view.edit((m) => patchFood(m, food, { override: undefined }))}
                >
                  {t.keepOut}
                </Button>
              </Line>
            );
          return (
            <Line key={food} kind="listed" words={t.listed(nameOf(food), found)}>
              <GoAhead
                label={t.goAhead}
                spoken={t.goAheadWith(nameOf(food))}
                why={t.why}
                yes={t.yes}
                no={t.no}
                act={(note) => void view.edit((m) => withGoneAhead(m, food, cautions, note, today()))}
              />
            </Line>
          );
        })}
      </ul>
      <OwnLimits mix={kept} view={view} />
    </section>
  );
}

function Line(props: { kind: string; words: string; children?: React.ReactNode }) {
  return (
    <li data-hurt={props.kind}>
      <span className="hurt-sign" aria-hidden="true">
        ▲
      </span>
      <span className="hurt-words">{props.words}</span>
      {props.children}
    </li>
  );
}
