/** Which rules collide, and the changes that would mend it, each tried beforehand and one press away. */
import type { ReactNode } from 'react';
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
import { words } from '../../words/words.ts';
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

const ALL = 'least-shares';

export function RemedyList({ collision, breaches, mix, keptRules, nameOf, mend: change }: Props) {
  const t = words().mix.mend;
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
  const leave = (rows: readonly number[], said: string) => (
    <Item
      key={said}
      words={said}
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
    <section className="remedies" aria-label={t.title}>
      <h2>{conflict.length === 1 ? t.one : t.several}</h2>
      <ul className="conflict">
        {conflict.map((s) => {
          const held = heldAt(mix, s.pointer);
          return (
            // One wish may stand here several times, about one food each.
            <li key={`${s.pointer} ${s.sentence}`}>
              {held
                ? t.held(nameOf(held))
                : isForeign(s.pointer, keptRules)
                  ? t.foreign(s.sentence)
                  : s.sentence}
            </li>
          );
        })}
      </ul>
      {!none && (
        <>
          <h3>{t.anyOne}</h3>
          <p className="hint">{t.tried}</p>
        </>
      )}
      {freeing.length + wish.length + asked.length > 0 && (
        <Section title={t.askLess} hint={t.askLessHint}>
          {freeing.map((id) => (
            <Item
              key={`hold ${id}`}
              words={t.letGo(nameOf(id))}
              act={() => mend((m) => hold(m, id, false))}
            />
          ))}
          {wish.length > 0 && (
            <Item
              words={t.wish(
                wish.map((id) => t.shareOf(nameOf(id), mix.problem.foods.find((f) => f.id === id)?.min ?? 0)),
              )}
              act={() => mend((m) => wishedInstead(m, wish))}
            />
          )}
          {asked.map(item)}
        </Section>
      )}
      {foods.length > 0 && (
        <Section title={t.addOne} hint={t.addOneHint}>
          {foods.map(item)}
        </Section>
      )}
      {target.length > 0 && (
        <Section title={t.widen} hint={t.widenHint}>
          {target.map(item)}
        </Section>
      )}
      {leftOut.length > 0 && <p>{t.leaveOutHint}</p>}
      {none && foreign && <p>{t.foreignHint}</p>}
      {leftOut.length > 0 && (
        <ul className="remedy-list">
          {blind.length > 1 &&
            leave(
              blind.map((r) => r.index),
              t.leaveOutAll(
                blind.length,
                blind.map((r) => ruleName(mix, r.index)),
              ),
            )}
          {leftOut.map(({ index, sentence }) => leave([index], t.leaveOut(sentence.replace(/\.$/, ''))))}
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
  const t = words().mix.mend;
  const rule = mix.problem.rules[index];
  if (rule && 'nutrient' in rule) return inSentence(rule.nutrient);
  if (rule && 'ratio' in rule) {
    const [over, under] = rule.ratio;
    return t.ratio(inSentence(over), inSentence(under));
  }
  return t.limit(index + 1);
}

/** A nutrient's name inside a sentence: "vitamin B6", not "Vitamin B6". */
function inSentence(tag: Tag): string {
  const { name } = nutrient(tag);
  return name.charAt(0).toLowerCase() + name.slice(1);
}
