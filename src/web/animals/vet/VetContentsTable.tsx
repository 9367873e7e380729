/** Key figures of the food: what was offered, in dry matter too, and of how much of it each figure is known. */
import type { VetContent } from '../../../household/reckon/care/vet-contents.ts';
import { countedName, nutrient, type Tag, unitWord } from '../../../nutrition/nutrients.ts';
import { words } from '../../../words/words.ts';
import type { VetFood } from './useVetFood.ts';

export function VetContentsTable({ food: { contents, intake, fault, working } }: { food: VetFood }) {
  const { vetPage, figures: f } = words();
  const t = vetPage.contents;
  if (!contents)
    return (
      <section className="vet-contents">
        <h4>{t.title}</h4>
        <p>{working ? vetPage.working : fault === undefined ? t.none : t.failed(fault)}</p>
      </section>
    );
  const counted = intake?.hoard === 'counted';
  const ateOf = (tag: Tag) =>
    intake?.nutrients.find((n) => n.tag === tag)?.[counted ? 'eaten' : 'taken'].content;
  const water = contents.lines.find((l) => l.tag === 'WATER')?.offered?.value;
  return (
    <section className="vet-contents">
      <h4>{t.title}</h4>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard */}
      <section className="table-scroll" tabIndex={0} aria-label={t.title}>
        <table>
          <caption>{t.per100}</caption>
          <thead>
            <tr>
              <th scope="col">{t.nutrient}</th>
              <th scope="col">{t.offered}</th>
              <th scope="col">{t.dry}</th>
              {intake && <th scope="col">{counted ? t.eaten : t.taken}</th>}
              <th scope="col">{t.known}</th>
            </tr>
          </thead>
          <tbody>
            {contents.lines.map(({ tag, offered }) => (
              <tr key={tag}>
                <th scope="row">{countedName(tag)}</th>
                <td>{offered ? contentWords(tag, offered) : vetPage.notKnown}</td>
                <td>{dryWords(tag, offered, water)}</td>
                {intake && <td>{ateWords(tag, ateOf(tag))}</td>}
                <td>{f.percent(Math.floor(offered?.coverage ?? 0), 0)}</td>
              </tr>
            ))}
            <tr>
              <th scope="row">{t.ratio}</th>
              <td>{contents.ratio === undefined ? vetPage.notKnown : t.toOne(contents.ratio)}</td>
              <td />
              {intake && <td />}
              <td />
            </tr>
          </tbody>
        </table>
      </section>
      <p className="vet-small">
        {t.knownHelp} {t.sources(contents.sources.tables, contents.sources.own)}
      </p>
    </section>
  );
}

/** Ends further apart than this part of the value are shown beside it. */
const APART = 0.02;

/** "17.9 g", "17.9 g (17.2 to 18.4)", "at least 0.6 g". */
function contentWords(tag: Tag, { value, low, high, estimated }: VetContent): string {
  const t = words().vetPage.contents;
  if (value === undefined) return t.atLeast(amount(tag, low));
  const said = [amount(tag, value)];
  if (high - low > APART * value) said.push(`(${t.range(rounded(low), rounded(high))})`);
  if (estimated) said.push(t.estimated);
  return said.join(' ');
}

/** "16.8 to 18.1 g": between these, whatever of the left-overs was not sorted. */
function ateWords(tag: Tag, content: { readonly low: number; readonly high: number } | undefined): string {
  const t = words().vetPage;
  if (!content) return t.notKnown;
  const { low, high } = content;
  if (high - low <= APART * high) return amount(tag, (low + high) / 2);
  return t.contents.range(rounded(low), amount(tag, high));
}

/** Of dry matter; nothing of the water itself, nor where the water is not known. */
function dryWords(tag: Tag, content: VetContent | undefined, water: number | undefined): string {
  if (content?.value === undefined || water === undefined || water >= 100 || tag === 'WATER') return '';
  return amount(tag, (100 * content.value) / (100 - water));
}

function amount(tag: Tag, value: number): string {
  // A number and its unit stay on one line.
  return words()
    .batch.contents.amount(rounded(value), unitWord(nutrient(tag).unit))
    .replace(' ', '\u00a0');
}

function rounded(value: number): string {
  return words().figures.number(Number(value.toPrecision(3)), 6);
}
