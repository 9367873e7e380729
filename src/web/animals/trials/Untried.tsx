/** Foods of the animal's mixes that it never tried, to be ticked where it knows them; and those that are ticked. */

import { Button } from 'react-aria-components';
import type { Animal } from '../../../household/model.ts';
import { neverTried } from '../../../household/reckon/care/food-standing.ts';
import { alike } from '../../../household/reckon/foods/alike.ts';
import { fedMix } from '../../../household/reckon/mix/eaters.ts';
import { mixesOf } from '../../../household/reckon/mix/refusals.ts';
import { words } from '../../../words/words.ts';
import { Failed } from '../../shared/Failed.tsx';
import { useParts } from '../../shared/parts.tsx';
import { useSave } from '../../store/household.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { allProfiles } from '../../store/profiles.ts';
import { useReferenceFoods } from '../../worker/engine.ts';
import '../../shared/styles/ticks.css';

interface Props {
  animal: Animal;
  /** Begins the plan of a trial; undefined while another runs. */
  onTry: ((food: { id: string; name: string }) => void) | undefined;
}

export function Untried({ animal, onTry }: Props) {
  const t = words().trials.lists;
  const { house } = useMixDraft();
  const save = useSave('animals');
  const knows = animal.knows ?? [];
  const tables = useReferenceFoods(knows);
  const mixes = mixesOf(house.mixes, animal.id);
  const untried = mixes
    .flatMap((m) => neverTried(house, fedMix(house, { ...m, animalIds: [animal.id] }, allProfiles(house))))
    .flatMap((n) => n.foods.map(({ food }) => ({ id: food.ref ?? food.id, name: food.name ?? food.id })));
  const foods = untried.filter((f, k) => untried.findIndex((other) => other.id === f.id) === k);
  const said = knows.map((id) => ({
    id,
    name: alike(house).known({ id }).name ?? nameByRef(house, id) ?? tables.get(id)?.name ?? id,
  }));
  const parts = useParts(foods, { part: 30 });

  function know(id: string, is: boolean) {
    const others = knows.filter((k) => k !== id);
    save.mutate({ ...animal, knows: is ? [...others, id] : others }, animal);
  }

  return (
    <section aria-label={t.untried} className="untried">
      <h3>{t.untried}</h3>
      {mixes.length === 0 ? (
        <p className="empty">{t.noMix}</p>
      ) : foods.length === 0 ? (
        <p className="empty">{t.noneUntried}</p>
      ) : (
        <p className="hint">{t.untriedHint(animal.name)}</p>
      )}
      <ul>
        {parts.shown.map((f) => (
          <Row key={f.id} name={f.name} known={false} onKnow={(is) => know(f.id, is)}>
            {onTry && (
              <Button className="quiet-button small" aria-label={t.tryItOf(f.name)} onPress={() => onTry(f)}>
                {t.tryIt}
              </Button>
            )}
          </Row>
        ))}
      </ul>
      {parts.more}
      {said.length > 0 && (
        <>
          <h3>{t.said}</h3>
          <ul>
            {said.map((f) => (
              <Row key={f.id} name={f.name} known onKnow={(is) => know(f.id, is)} />
            ))}
          </ul>
        </>
      )}
      <Failed error={save.error} />
    </section>
  );
}

function Row(props: { name: string; known: boolean; onKnow(is: boolean): void; children?: React.ReactNode }) {
  const t = words().trials.lists;
  return (
    <li>
      <span className="untried-name">{props.name}</span>
      <label className="tick">
        <input
          type="checkbox"
          aria-label={t.knowsOf(props.name)}
          checked={props.known}
          onChange={(e) => props.onKnow(e.target.checked)}
        />
        <span>{t.knows}</span>
      </label>
      {props.children}
    </li>
  );
}

/** The name under which a mix has a number of the tables. */
function nameByRef(
  house: {
    readonly mixes: readonly {
      readonly problem: { readonly foods: readonly { readonly ref?: string; readonly name?: string }[] };
    }[];
  },
  ref: string,
): string | undefined {
  return house.mixes.flatMap((m) => m.problem.foods).find((f) => f.ref === ref)?.name;
}
