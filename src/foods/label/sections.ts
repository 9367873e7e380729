/** Words that begin a section of a label. */
import type { Item } from './match.ts';
import type { Section } from './part.ts';
import { isRole } from './per.ts';
import type { Role } from './words.ts';

const SECTIONS: readonly (readonly [Role, Section])[] = [
  ['ingredients', 'ingredients'],
  ['composition', 'composition'],
  ['additives', 'additives'],
  ['constituents', 'constituents'],
  ['heading', 'analysis'],
  ['subheading', 'vitamins'],
];

export function sectionOf(item: Item | undefined): Section | undefined {
  return SECTIONS.find(([role]) => isRole(item, role))?.[1];
}
