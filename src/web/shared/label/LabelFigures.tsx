/** What a label comes to: every amount in 100 g as fed, with the print it follows from where the two differ. */
import { amountWords, shortNumber } from '../../../foods/figure-words.ts';
import { countOf } from '../../../foods/figures.ts';
import type { Figures } from '../../../foods/food.ts';
import type { ReadAmount } from '../../../foods/label/reading.ts';
import { capital } from '../../../formulation/explain/sentences.ts';
import { NUTRIENTS, type Tag } from '../../../nutrition/nutrients.ts';

interface Props {
  figures: Figures;
  amounts: readonly ReadAmount[];
  /** What was reckoned rather than printed. */
  notes: readonly string[];
  /** Nutrients whose amount waits for an answer. */
  waiting: ReadonlySet<Tag>;
}

export function LabelFigures({ figures, amounts, notes, waiting }: Props) {
  const rows = NUTRIENTS.filter(({ tag }) => amountWords(figures, tag) !== 'unknown' || waiting.has(tag));
  return (
    <section className="label-figures" aria-label="What this comes to">
      <h4>What this comes to</h4>
      {rows.length === 0 ? (
        <p className="hint">No amount yet; every nutrient is unknown.</p>
      ) : (
        <table>
          <caption>
            {countOf(figures)} known, {NUTRIENTS.length - countOf(figures)} unknown; unknown is never taken as
            zero
          </caption>
          <thead>
            <tr>
              <th scope="col">Nutrient</th>
              <th scope="col">In 100 g as fed</th>
              <th scope="col">As printed</th>
            </tr>
          </thead>
          <tbody>
            {rows.map(({ tag, name }) => (
              <tr key={tag} className={amountWords(figures, tag) === 'unknown' ? 'unknown' : ''}>
                <th scope="row">{name}</th>
                <td>
                  {amountWords(figures, tag)}
                  {amountWords(figures, tag) === 'unknown' && <small> (waits for an answer)</small>}
                </td>
                <td>{printed(tag, amounts)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      )}
      {notes.length > 0 && (
        <ul className="label-notes">
          {notes.map((note) => (
            <li key={note} className="hint">
              {capital(note)}.
            </li>
          ))}
        </ul>
      )}
      {figures.composition.WATER === undefined && rows.length > 0 && (
        <p className="hint">
          Moisture is unknown, so nothing can be shown in dry matter. If the pack gives it, add a line such as
          “moisture 10 %”.
        </p>
      )}
    </section>
  );
}

/** "0.9 %", "5 g in 40 g": the figures behind an amount, in the label's own units. */
function printed(tag: Tag, amounts: readonly ReadAmount[]): string {
  const said = amounts
    .filter((a) => a.tag === tag)
    .map((a) => {
      const figure = a.value ?? a.low ?? a.high;
      if (figure === undefined) return a.heard;
      const both = a.value === undefined && a.low !== undefined && a.high !== undefined;
      const guarantee = a.value !== undefined || both ? '' : a.low !== undefined ? 'min. ' : 'max. ';
      const amount = `${guarantee}${shortNumber(figure)}${both ? ` to ${shortNumber(a.high!)}` : ''} ${a.unit === 'ug' ? 'µg' : a.unit}`;
      const of = a.unit === '%' || a.per.grams === undefined ? '' : ` in ${a.per.grams} g`;
      return `${amount}${of}${a.per.basis === 'dry matter' ? ' of dry matter' : ''}${a.as === 'salt' ? ' of salt' : ''}`;
    });
  return [...new Set(said)].join('; ');
}
