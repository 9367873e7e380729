/** Which rules collide, and the changes that would mend it, each tried beforehand and one press away. */
import type { ReactNode } from 'react';
import { joined } from '../../formulation/explain/sentences.ts';
import { pointerSteps } from '../../formulation/problem/json-pointer.ts';
import type { Collision, Remedy, Statement } from '../../formulation/problem/result.ts';
import type { Mix } from '../../household/model.ts';
import { hold, withHolds } from '../../household/reckon/mix/mix-edits.ts';
import {
  heldAt,
  insisted,
  isForeign,
  sortedRemedies,
  wishedInstead,
  withRemedy,
} from '../../household/reckon/mix/mix-remedies.ts';
import { isLimitOfTarget, withRuleLeftOut } from '../../household/reckon/mix/own-limits.ts';
import { nutrient, type Tag } from '../../nutrition/nutrients.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { useWorking } from './live/useWorking.ts';
import { Item, RemedyItem } from './RemedyItem.tsx';
import './RemedyList.css';

interface Props {
  collision: Collision;
  /** Rules and bounds that the shares as they stand break. */
  breaches: readonly Statement[];
  /** With what its animals bring. */
  mix: Mix;
  /** So many rules are the mix's own; those after them come from its animals. */
  keptRules: number;
  nameOf(id: string): string;
  /** Makes the change, then balances. */
  mend(change: (mix: Mix) => Mix): void;
}

const ALL = 'all least shares';

export function RemedyList({ collision, breaches, mix, keptRules, nameOf, mend: change }: Props) {
  const { conflict } = collision;
  const mend: typeof change = (next) => {
    change(next);
    // This list is about to go, and with it the button that was pressed.
    focusWhenThere('.verdict .big-button');
  };
  const heldInConflict = [...new Set(conflict.flatMap((s) => heldAt(mix, s.pointer) ?? []))];
  const insistedOn = insisted(mix, conflict);
  const works = useWorking([
    ...heldInConflict.map((id) => [id, withHolds(hold(mix, id, false))] as const),
    ...(insistedOn.length > 0 ? [[ALL, withHolds(wishedInstead(mix, insistedOn))] as const] : []),
  ]);
  const freeing = heldInConflict.filter((id) => works.includes(id));
  const wish = works.includes(ALL) ? insistedOn : [];
  const { asked, foods, target } = sortedRemedies(collision.remedies, mix, keptRules);
  const none = [freeing, wish, asked, foods, target].every((list) => list.length === 0);
  const own = (statements: readonly Statement[]) =>
    rulesIn(statements.filter((s) => !isForeign(s.pointer, keptRules)));
  // Where only many bounds of the target at once would do, leaving out what no figure speaks for may be wiser.
  const one = target.filter((r) => r.kind === 'loosen');
  const leftOut = [freeing, wish, asked, foods, one].every((list) => list.length === 0) ? own(conflict) : [];
  const unsure = rulesIn(collision.unsure).map((r) => r.index);
  const blind = leftOut.length > 0 ? own(breaches).filter((r) => unsure.includes(r.index)) : [];
  const foreign = conflict.some((s) => isForeign(s.pointer, keptRules));
  const item = (remedy: Remedy) => (
    <RemedyItem
      key={remedy.sentence}
      remedy={remedy}
      mix={mix}
      nameOf={nameOf}
      act={(on) => mend((m) => withRemedy(m, remedy, on))}
    />
  );
  const leave = (rows: readonly number[], words: string) => (
    <Item
      key={words}
      words={words}
      limits={
        rows.some((row) => isLimitOfTarget(mix.problem, `/rules/${row}`))
          ? { mix, change: { leftOut: rows }, nameOf }
          : undefined
      }
      act={(on) =>
        mend((m) => rows.toSorted((a, b) => b - a).reduce((left, row) => withRuleLeftOut(left, row, on), m))
      }
    />
  );

  return (
    <section className="remedies" aria-label="What collides and what mends it">
      <h2>{conflict.length === 1 ? 'This cannot be kept' : 'These cannot all be kept'}</h2>
      <ul className="conflict">
        {conflict.map((s) => {
          const held = heldAt(mix, s.pointer);
          return (
            // One wish may stand here several times, about one food each.
            <li key={`${s.pointer} ${s.sentence}`}>
              {held ? `${nameOf(held)} is held at its share.` : s.sentence}
              {isForeign(s.pointer, keptRules) && ' (The target of another animal of this mix asks it.)'}
            </li>
          );
        })}
      </ul>
      {!none && (
        <>
          <h3>Any one of these mends it</h3>
          <p className="hint">
            Each was tried: with it there is a mix that keeps every rule. “Do this” makes the change and
            balances the mix; Undo takes it back. Before a limit of the target gives way, you are asked.
          </p>
        </>
      )}
      {freeing.length + wish.length + asked.length > 0 && (
        <Section title="Ask for less" hint="What the animal needs stays as it is.">
          {freeing.map((id) => (
            <Item
              key={`hold ${id}`}
              words={`Let go of ${nameOf(id)}.`}
              act={() => mend((m) => hold(m, id, false))}
            />
          ))}
          {wish.length > 0 && (
            <Item
              words={`Wish for these shares instead of insisting on them: ${joined(wish.map((id) => `${nameOf(id)} ${mix.problem.foods.find((f) => f.id === id)!.min} %`))}. The mix then comes as near to them as the other rules allow.`}
              act={() => mend((m) => wishedInstead(m, wish))}
            />
          )}
          {asked.map(item)}
        </Section>
      )}
      {foods.length > 0 && (
        <Section title="Add one food" hint="Foods of the tables that carry what is missing.">
          {foods.map(item)}
        </Section>
      )}
      {target.length > 0 && (
        <Section
          title="Widen the target"
          hint="These ranges are there for the animal. Widen one only where you know why."
        >
          {target.map(item)}
        </Section>
      )}
      {leftOut.length > 0 && (
        <p>
          No single change was found that mends it. A rule may be left out of this mix; add foods that carry
          what is missing, or choose another target.
        </p>
      )}
      {none && foreign && (
        <p>
          What the target of another animal asks is changed under Targets; or take that animal off this mix,
          below.
        </p>
      )}
      {leftOut.length > 0 && (
        <ul className="remedy-list">
          {blind.length > 1 &&
            leave(
              blind.map((r) => r.index),
              `Leave out all ${blind.length} rules that rest on missing figures and are not met: ${blind.map((r) => ruleName(mix, r.index)).join(', ')}.`,
            )}
          {leftOut.map(({ index, sentence }) =>
            leave([index], `Leave out the rule “${sentence.replace(/\.$/, '')}”.`),
          )}
        </ul>
      )}
    </section>
  );
}

function Section(props: { title: string; hint: string; children: ReactNode }) {
  return (
    <>
      <h4>{props.title}</h4>
      <p className="hint">{props.hint}</p>
      <ul className="remedy-list">{props.children}</ul>
    </>
  );
}

/** The rules among some statements, each once. */
function rulesIn(statements: readonly Statement[]): { index: number; sentence: string }[] {
  const found = new Map<number, string>();
  for (const { pointer, sentence } of statements) {
    const [kind, index] = pointerSteps(pointer);
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
