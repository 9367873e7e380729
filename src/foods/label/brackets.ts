/**
 * Brackets in a line. Those that hold only known parts of an amount are opened ("(min.)", "(per 100 g)");
 * those that name a nutrient with a figure stand as a part of their own; the chemical form of a mineral or vitamin
 * is passed over ("(as copper sulphate)"). Anything else stays, and makes its part unread.
 */
import { nutrient } from '../../nutrition/nutrients.ts';
import type { Item } from './match.ts';
import { mayChangeMeaning } from './suspect.ts';

const OPEN = '([{';
const CLOSE = ')]}';
/** Deeper brackets than any label has are taken as separators, which also keeps the time linear. */
const DEEPEST = 4;

interface Level {
  readonly items: Item[];
  readonly bracket?: Item;
}

export function openBrackets(items: readonly Item[]): readonly Item[] {
  if (!items.some((item) => item.kind === 'sign' && (OPEN.includes(item.text) || CLOSE.includes(item.text))))
    return items;
  const outermost: Item[] = [];
  const levels: Level[] = [{ items: outermost }];
  for (const item of items) {
    const top = levels.at(-1)!;
    if (item.kind !== 'sign') top.items.push(item);
    else if (OPEN.includes(item.text)) {
      if (levels.length > DEEPEST) top.items.push(separator(item));
      else levels.push({ items: [], bracket: item });
    } else if (CLOSE.includes(item.text)) {
      if (levels.length === 1) top.items.push(separator(item));
      else {
        levels.pop();
        const outer = levels.at(-1)!.items;
        append(outer, opened(top, item, outer.at(-1)));
      }
    } else top.items.push(item);
  }
  // An unclosed bracket parts like a semicolon.
  while (levels.length > 1) {
    const { items: inner, bracket } = levels.pop()!;
    levels.at(-1)!.items.push(separator(bracket!));
    append(levels.at(-1)!.items, inner);
  }
  return outermost;
}

function opened(level: Level, close: Item, before: Item | undefined): readonly Item[] {
  const items = level.items.map((item) => ({ ...item, bracketed: true }));
  const { bracket } = level;
  const figures = items.some((i) => i.kind === 'number' || i.kind === 'odd');
  const names = items.filter((i) => i.kind === 'name');
  const words = items.some((i) => i.kind === 'word');
  if (figures) return names.length > 0 ? [separator(bracket!), ...items, separator(close)] : items;
  if (before?.kind === 'name') {
    const { name } = before;
    const groups = name.tags.map((tag) => nutrient(tag).group);
    const same = names.every((n) => n.name.tags.some((tag) => name.tags.includes(tag)));
    if (!words && same) return items;
    const form = name.tags.length === 0 || groups.every((g) => g === 'mineral' || g === 'vitamin');
    // A form says nothing of what the amount is per or of; where the bracket may say that, it stays.
    if (form && !items.some(mayChangeMeaning)) return [];
  }
  return items;
}

function separator(item: Item): Item {
  return { at: item.at, end: item.end, text: item.text, kind: 'sign' };
}

function append(list: Item[], more: readonly Item[]): void {
  for (const item of more) list.push(item);
}
