/** Which rules collide, and the single changes that would free them, each one press away. */
import { Button } from 'react-aria-components';
import type { Collision, Remedy } from '../../formulation/result.ts';
import type { Mix } from '../../household/model.ts';
import { addFood, hold, setAtPointer } from '../mix/edits.ts';

interface Props {
  collision: Collision;
  mix: Mix;
  nameOf(id: string): string;
  /** Makes the change, then balances. */
  mend(change: (mix: Mix) => Mix): void;
}

export function RemedyList({ collision, mix, nameOf, mend }: Props) {
  const heldInConflict = mix.held.filter((id) =>
    collision.conflict.some((s) =>
      s.pointer.startsWith(`/foods/${mix.problem.foods.findIndex((f) => f.id === id)}/`),
    ),
  );
  const remedies = collision.remedies.filter((r) => !(r.kind === 'loosen' && heldAt(mix, r.pointer)));
  return (
    <section className="remedies" aria-label="What collides and what mends it">
      <h2>These cannot all be kept</h2>
      <ul className="conflict">
        {collision.conflict.map((s) => (
          <li key={s.pointer}>
            {heldAt(mix, s.pointer) ? `${nameOf(heldAt(mix, s.pointer)!)} is held at its share.` : s.sentence}
          </li>
        ))}
      </ul>
      {(remedies.length > 0 || mix.held.length > 0) && <h3>Any one of these mends it</h3>}
      <ul className="remedy-list">
        {heldInConflict.map((id) => (
          <Item
            key={`hold ${id}`}
            words={`Let go of ${nameOf(id)}.`}
            act={() => mend((m) => hold(m, id, false))}
          />
        ))}
        {heldInConflict.length === 0 && mix.held.length > 0 && (
          <Item words="Let go of every held food." act={() => mend((m) => ({ ...m, held: [] }))} />
        )}
        {remedies.map((r) => (
          <Item
            key={r.kind === 'loosen' ? r.pointer : r.food.id}
            words={r.sentence}
            act={() => mend((m) => applied(m, r))}
          />
        ))}
      </ul>
    </section>
  );
}

function Item({ words, act }: { words: string; act(): void }) {
  return (
    <li>
      <span>{words}</span>
      <Button className="button" aria-label={`Do this: ${words}`} onPress={act}>
        Do this
      </Button>
    </li>
  );
}

function applied(mix: Mix, remedy: Remedy): Mix {
  if (remedy.kind === 'add') return addFood(mix, remedy.food);
  return { ...mix, problem: setAtPointer(mix.problem, remedy.pointer, remedy.to) };
}

/** The held food whose share a pointer names. */
function heldAt(mix: Mix, pointer: string): string | undefined {
  const [, kind, index, bound] = pointer.split('/');
  if (kind !== 'foods' || (bound !== 'min' && bound !== 'max' && bound !== undefined)) return undefined;
  const id = mix.problem.foods[Number(index)]?.id;
  return id !== undefined && mix.held.includes(id) ? id : undefined;
}
