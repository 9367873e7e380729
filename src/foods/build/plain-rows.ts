/**
 * Which rows of the USDA table are plain foods and stay, and which name a maker or are meals from a kitchen and go.
 *
 * A row that release 26 holds, as this project keeps it, is plain: its makers' rows were left out (see
 * `tables/usda-sr26`). A row that only release 28 holds is judged by its title, without a list of makers: it stays
 * where every word of it is a word that the plain rows use too. A maker's name is a word they do not use.
 */
import type { TableRow } from './table.ts';

/** Baby foods, fast foods, meals and restaurant foods: nothing to feed, whoever makes them. First digits of the number. */
const GROUPS_THAT_GO = ['03', '21', '22', '36'];

/** Rows of release 26 that name a maker or a product all the same, by their NDB numbers. */
const NAME_A_MAKER: ReadonlySet<string> = new Set([
  '01200',
  '01223',
  '01224',
  '14065',
  '14599',
  '14625',
  '14627',
  '14628',
  '16211',
  '16215',
  '16216',
  '18942',
  '18943',
  '22963',
  '42204',
]);

/** A word is the table's own where this many plain titles have it, in the same group or in all. */
const IN_ITS_GROUP = 2;
const IN_ALL_GROUPS = 8;

/** Words of the trade that plain titles use too seldom, or not at all, as the abbreviated table writes them. */
const TRADE_WORDS: ReadonlySet<string> = new Set(
  `B12 D2 CMDTY COMMODITY COMMOD INCL INCLUDES USDA REFINED REMAINING UNENR UNPREPARED REHYDRATED
  BERRIES CANADA CHICKPEA CONE CRIMINI CULTIVATED EMI ESCAROLE GOJI GREEK GROUSE HEMP HULLED KIMCHI MANGO RUFFED SHARP
  SHELL TSUNOMATA
  BOLAR BONED BRAINS BRLED BUCO BULK CENTRE CHCK CHPS CHUMP COARSE CUBE CUTLET DNUDED FINE FLAP FRENCHED FRNCHED
  HEEL HINDSHANK INTERMUSCULAR LON MANUFACTURING MCK MOCK NAVEL NETTED NUGGETS OSSO ROLLED SADDLE SHIN SLOW SOAKED
  SRLOIN STRIPLOIN SWEETBREAD TESTES TROTTER TUNNEL`.split(/\s+/),
);

/** Words of two letters or more; figures alone say nothing of a maker. */
function wordsOf(title: string): string[] {
  return [...new Set(title.toUpperCase().match(/[A-Z][A-Z0-9'&]+/g) ?? [])];
}

const groupOf = (ndb: string) => ndb.slice(0, 2);

/**
 * The rows that stay, in their order.
 * @param rows rows of release 28 under the titles of the abbreviated table
 * @param isInSr26 whether release 26, as this project keeps it, holds the food with that NDB number
 * @param kept NDB numbers that stay in any case: the foods that keepers use, whose names are made by hand
 */
export function plainRows(
  rows: readonly TableRow[],
  isInSr26: (ndb: string) => boolean,
  kept: ReadonlySet<string>,
): TableRow[] {
  const plain = (ndb: string) => isInSr26(ndb) && !NAME_A_MAKER.has(ndb);
  const inGroup = new Map<string, number>();
  const inAll = new Map<string, number>();
  const count = (counts: Map<string, number>, key: string) => counts.set(key, (counts.get(key) ?? 0) + 1);
  for (const row of rows) {
    const ndb = ndbOf(row);
    if (!plain(ndb)) continue;
    for (const word of wordsOf(row.tableName)) {
      count(inAll, word);
      count(inGroup, `${groupOf(ndb)} ${word}`);
    }
  }
  const isOurs = (word: string, ndb: string) =>
    TRADE_WORDS.has(word) ||
    (inAll.get(word) ?? 0) >= IN_ALL_GROUPS ||
    (inGroup.get(`${groupOf(ndb)} ${word}`) ?? 0) >= IN_ITS_GROUP;
  return rows.filter((row) => {
    const ndb = ndbOf(row);
    if (kept.has(ndb) || plain(ndb)) return true;
    if (NAME_A_MAKER.has(ndb) || GROUPS_THAT_GO.includes(groupOf(ndb))) return false;
    return wordsOf(row.tableName).every((word) => isOurs(word, ndb));
  });
}

/** NDB number of a row of the USDA table. */
export function ndbOf({ ref }: TableRow): string {
  return ref.slice('sr28:'.length);
}
