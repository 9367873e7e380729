/** Which rules collide, and the single changes that would free them, each one press away. */
import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Problem } from '../../formulation/problem.ts';
import type { Collision, Remedy } from '../../formulation/result.ts';
import type { Mix } from '../../household/model.ts';
import { engine } from '../data/engine.ts';
import { addFood, hold, setAtPointer, withHolds } from '../mix/edits.ts';

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
  const freeing = useFreeing(mix, heldInConflict);
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
      {(remedies.length > 0 || freeing.length > 0) && <h3>Any one of these mends it</h3>}
      <ul className="remedy-list">
        {freeing.map((id) => (
          <Item
            key={`hold ${id}`}
            words={`Let go of ${nameOf(id)}.`}
            act={() => mend((m) => hold(m, id, false))}
          />
        ))}
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

/** Those of the held foods whose release alone makes a mix possible. */
function useFreeing(mix: Mix, held: readonly string[]): readonly string[] {
  const [freeing, setFreeing] = useState<readonly string[]>([]);
  const question = JSON.stringify(
    held.map((id) => [id, withHolds(hold(mix, id, false))] satisfies [string, Problem]),
  );
  useEffect(() => {
    let stale = false;
    const asked = (JSON.parse(question) as [string, Problem][]).map(async ([id, problem]) => {
      const answer = await engine.move(problem, {}, {});
      return answer.ok && answer.value.status === 'optimal' ? [id] : [];
    });
    void Promise.all(asked).then(
      (found) => stale || setFreeing(found.flat()),
      () => {},
    );
    return () => {
      stale = true;
    };
  }, [question]);
  return freeing;
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
