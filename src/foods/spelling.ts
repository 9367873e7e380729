/** Words that keepers on either side of the Atlantic call differently, for search. */

const PAIRS: readonly (readonly [string, string])[] = [
  ['fibre', 'fiber'],
  ['flavour', 'flavor'],
  ['yoghurt', 'yogurt'],
  ['grey', 'gray'],
  ['wholemeal', 'wholewheat'],
  ['courgette', 'zucchini'],
  ['aubergine', 'eggplant'],
  ['beetroot', 'beet'],
  ['maize', 'corn'],
  ['mangetout', 'snowpea'],
  ['linseed', 'flaxseed'],
  ['groundnut', 'peanut'],
  ['rocket', 'arugula'],
  ['chickpea', 'garbanzo'],
  ['swede', 'rutabaga'],
  ['coriander', 'cilantro'],
  ['prawn', 'shrimp'],
  ['sultana', 'raisin'],
  ['chilli', 'chili'],
  ['dried', 'dehydrated'],
  ['fresh', 'raw'],
  ['soya', 'soy'],
];

const twins = new Map<string, string[]>();
for (const [a, b] of PAIRS) {
  twins.set(a, [...(twins.get(a) ?? []), b]);
  twins.set(b, [...(twins.get(b) ?? []), a]);
}

/** A word without case, accents and the plural: "Seeds" and "seed" are one. */
export function stem(word: string): string {
  const plain = word
    .toLowerCase()
    .normalize('NFD')
    .replace(/[\u0300-\u036f']/g, '');
  if (plain.length > 4 && plain.endsWith('ies')) return `${plain.slice(0, -3)}y`;
  if (plain.length > 4 && plain.endsWith('oes')) return plain.slice(0, -2);
  if (plain.length > 3 && plain.endsWith('s') && !plain.endsWith('ss') && !plain.endsWith('us'))
    return plain.slice(0, -1);
  return plain;
}

/** A stemmed word and what it is called elsewhere; the word itself first. */
export function withTwins(stemmed: string): string[] {
  return [stemmed, ...(twins.get(stemmed) ?? [])];
}
