/** Why a reference number is not in the tables, and what to take in its place. */

/** Foods that keepers used from the Indian Food Composition Tables 2017 while they were shipped, and what stands for them now. */
const INDIAN: Readonly<Record<string, readonly [name: string, instead: string | undefined]>> = {
  A003: ['pearl millet', 'pub:pearl-millet'],
  A010: ['finger millet', 'pub:finger-millet'],
  A011: ['rice flakes', undefined],
  A012: ['puffed rice', 'pub:puffed-brown-rice'],
  A016: ['little millet', 'pub:little-millet-in-husk'],
  A017: ['kodo millet', 'pub:kodo-millet-in-husk'],
  B017: ['whole peas', 'pub:pea-whole-dry'],
  C020: ['fenugreek leaf', undefined],
  E017: ['dried date', 'sr28:09087'],
  H008: ['cress seed', undefined],
  H009: ['black sesame seed', 'sr28:12023'],
  H015: ['niger seed', undefined],
  H019: ['safflower seed', 'pub:safflower-seed-in-hull'],
};

const OWN = 'enter its label as a food of your own';

/**
 * A sentence for a number that {@link Reference.get} does not know: what it was, where that can be told, and the way
 * out. The figures themselves are gone with the table.
 */
export function whyMissing(ref: string): string {
  const [table, number = ''] = ref.split(':');
  const shown = JSON.stringify(ref.length > 40 ? `${ref.slice(0, 40)}...` : ref);
  if (table === 'ifct') {
    const [name, instead] = INDIAN[number] ?? [];
    const was = name ? ` (${name})` : '';
    return `${shown}${was} stood in the Indian Food Composition Tables, which are no longer shipped; ${
      instead ? `take "${instead}" in its place, or ` : ''
    }${OWN}`;
  }
  if (table === 'sr28' && /^\d{5}$/.test(number))
    return `no food ${shown} in the reference tables, which hold no row of a maker and no ready meal; find a plain food with: npx pouchful foods search <words>, or ${OWN}`;
  return `no food ${shown} in the reference tables; find one with: npx pouchful foods search <words>`;
}
