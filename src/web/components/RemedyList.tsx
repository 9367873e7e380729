/** Which rules collide, and the single changes that would free them, each one press away. */
import { useEffect, useState } from 'react';
import { Button } from 'react-aria-components';
import type { Problem } from '../../formulation/problem.ts';
import type { Change, Collision, Remedy, Statement } from '../../formulation/result.ts';
import type { Mix } from '../../household/model.ts';
import { nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { engine } from '../data/engine.ts';
import { addFood, hold, setAtPointer, withHolds, withoutRule } from '../mix/edits.ts';

interface Props {
  collision: Collision;
  /** Rules and bounds that the shares as they stand break. */
  breaches: readonly Statement[];
  mix: Mix;
  nameOf(id: string): string;
  /** Makes the change, then balances. */
  mend(change: (mix: Mix) => Mix): void;
}

export function RemedyList({ collision, breaches, mix, nameOf, mend }: Props) {
  const heldInConflict = mix.held.filter((id) =>
    collision.conflict.some((s) =>
      s.pointer.startsWith(`/foods/${mix.problem.foods.findIndex((f) => f.id === id)}/`),
    ),
  );
  const freeing = useFreeing(mix, heldInConflict);
  // A share that the keeper holds is let go of, not loosened.
  const remedies = collision.remedies.filter((r) => !changesOf(r).some((c) => heldAt(mix, c.pointer)));
  const leftOut = remedies.length + freeing.length === 0 ? rulesIn(collision.conflict) : [];
  const unsure = rulesIn(collision.unsure).map((r) => r.index);
  const blind = leftOut.length > 0 ? rulesIn(breaches).filter((r) => unsure.includes(r.index)) : [];
  return (
    <section className="remedies" aria-label="What collides and what mends it">
      <h2>{collision.conflict.length === 1 ? 'This cannot be kept' : 'These cannot all be kept'}</h2>
      <ul className="conflict">
        {collision.conflict.map((s) => (
          <li key={s.pointer}>
            {heldAt(mix, s.pointer) ? `${nameOf(heldAt(mix, s.pointer)!)} is held at its share.` : s.sentence}
          </li>
        ))}
      </ul>
      {(remedies.length > 0 || freeing.length > 0) && <h3>Any one of these mends it</h3>}
      {leftOut.length > 0 && (
        <p>
          No single change was found that mends it. A rule may be left out of this mix; add foods that carry
          what is missing, or choose another target.
        </p>
      )}
      <ul className="remedy-list">
        {freeing.map((id) => (
          <Item
            key={`hold ${id}`}
            words={`Let go of ${nameOf(id)}.`}
            act={() => mend((m) => hold(m, id, false))}
          />
        ))}
        {remedies.map((r) => (
          <Item key={r.sentence} words={r.sentence} act={() => mend((m) => applied(m, r))} />
        ))}
        {blind.length > 1 && (
          <Item
            words={`Leave out all ${blind.length} rules that rest on missing figures and are not met: ${blind.map((r) => ruleName(mix, r.index)).join(', ')}.`}
            act={() => mend((m) => blind.reduceRight((left, r) => withoutRule(left, r.index), m))}
          />
        )}
        {leftOut.map(({ index, sentence }) => (
          <Item
            key={index}
            words={`Leave out the rule “${sentence.replace(/\.$/, '')}”.`}
            act={() => mend((m) => withoutRule(m, index))}
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
  const problem = changesOf(remedy).reduce((p, c) => setAtPointer(p, c.pointer, c.to), mix.problem);
  return { ...mix, problem };
}

function changesOf(remedy: Remedy): readonly Change[] {
  return remedy.kind === 'loosen' ? [remedy] : remedy.kind === 'add' ? [] : remedy.changes;
}

/** The held food whose share a pointer names. */
function heldAt(mix: Mix, pointer: string): string | undefined {
  const [, kind, index, bound] = pointer.split('/');
  if (kind !== 'foods' || (bound !== 'min' && bound !== 'max' && bound !== undefined)) return undefined;
  const id = mix.problem.foods[Number(index)]?.id;
  return id !== undefined && mix.held.includes(id) ? id : undefined;
}

/** The rules among some statements, each once. */
function rulesIn(statements: readonly Statement[]): { index: number; sentence: string }[] {
  const found = new Map<number, string>();
  for (const { pointer, sentence } of statements) {
    const [, kind, index] = pointer.split('/');
    if (kind === 'rules') found.set(Number(index), sentence);
  }
  return [...found].map(([index, sentence]) => ({ index, sentence }));
}

function ruleName(mix: Mix, index: number): string {
  const rule = mix.problem.rules[index];
  if (rule && 'nutrient' in rule) return inSentence(rule.nutrient);
  if (rule && 'ratio' in rule) return rule.ratio.map(inSentence).join(' to ');
  return `rule ${index + 1}`;
}

/** A nutrient's name inside a sentence: "vitamin B6", not "Vitamin B6". */
function inSentence(tag: Tag): string {
  const { name } = nutrient(tag);
  return name.charAt(0).toLowerCase() + name.slice(1);
}
