/** What a label comes to: every amount in 100 g as fed, with the print it follows from where the two differ. */
import { knownWords, shortNumber } from '../../../foods/figure-words.ts';
import { countOf } from '../../../foods/figures.ts';
import type { Figures } from '../../../foods/food.ts';
import type { ReadAmount } from '../../../foods/label/reading.ts';
import { capital } from '../../../formulation/explain/sentences.ts';
import { NUTRIENTS, type Tag, unitWord } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
import { NutrientName } from '../words/NutrientName.tsx';

interface Props {
  figures: Figures;
  amounts: readonly ReadAmount[];
  /** What was reckoned rather than printed. */
  notes: readonly string[];
  /** Nutrients whose amount waits for an answer. */
  waiting: ReadonlySet<Tag>;
}

export function LabelFigures({ figures, amounts, notes, waiting }: Props) {
  const rows = NUTRIENTS.filter(({ tag }) => knownWords(figures, tag) !== undefined || waiting.has(tag));
  const { label, common, terms } = words();
  const t = label.comesTo;
  return (
    <section className="label-figures" aria-label={t.title}>
      <h4>{t.title}</h4>
      {rows.length === 0 ? (
        <p className="hint">{t.none}</p>
      ) : (
        <table>
          <caption>{t.known(countOf(figures), NUTRIENTS.length - countOf(figures))}</caption>
          <thead>
            <tr>
              <th scope="col">{t.nutrient}</th>
              <th scope="col">{t.fed}</th>
              <th scope="col">{t.printed}</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ tag }) => (
              <tr key={tag} className={knownWords(figures, tag) === undefined ? 'unknown' : ''}>
                <th scope="row">
                  <NutrientName tag={tag} />
                </th>
                <td>
                  {knownWords(figures, tag) ?? common.unknown}
                  {knownWords(figures, tag) === undefined && <small> {t.waits}</small>}
                </td>
                <td>{printed(tag, amounts)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {rows.length > 0 && <p className="hint">{terms.asFed.help}</p>}
      {notes.length > 0 && (
        <ul className="label-notes">
          {notes.map((note) => (
            <li key={note} className="hint">
              {capital(note)}.
            </li>
          ))}
        </ul>
      )}
      {figures.composition.WATER === undefined && rows.length > 0 && <p className="hint">{t.noMoisture}</p>}
    </section>
  );
}

/** "0.9 %", "5 g in 40 g": the figures behind an amount, in the label's own units. */
function printed(tag: Tag, amounts: readonly ReadAmount[]): string {
  const t = words().label.comesTo;
  const said = amounts
    .filter((a) => a.tag === tag)
    .map((a) => {
      const figure = a.value ?? a.low ?? a.high;
      if (figure === undefined) return a.heard;
      const both = a.value === undefined && a.low !== undefined && a.high !== undefined;
      const number = both ? t.range(shortNumber(figure), shortNumber(a.high ?? figure)) : shortNumber(figure);
      const amount = `${number} ${printedUnit(a.unit)}`;
      const said =
        a.value !== undefined || both ? amount : a.low !== undefined ? t.min(amount) : t.max(amount);
      const of = a.unit === '%' || a.per.grams === undefined ? said : t.in(said, a.per.grams);
      const based = a.per.basis === 'dry matter' ? t.ofDry(of) : of;
      return a.as === 'salt' ? t.ofSalt(based) : based;
    });
  return [...new Set(said)].join('; ');
}

function printedUnit(unit: ReadAmount['unit']): string {
  return unit === 'ug' || unit === 'IU' ? unitWord(unit) : unit;
}
