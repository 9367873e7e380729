/** Two mixes in one picture: what they are as a whole, their foods and their windows; and the same as a table. */
import { words } from '../../../../words/words.ts';
import { useReferenceFoods } from '../../../worker/engine.ts';
import { CompareSign, type Of } from './CompareMark.tsx';
import { CompareShares, signed } from './CompareShares.tsx';
import { CompareWindows, stateWords, valueWords, windowWords } from './CompareWindows.tsx';
import { type ComparedMix, type Comparison, compareMixes, type RuleStanding, type Whole } from './compare.ts';

/** A mix to compare, under the name it is shown by. */
export interface NamedMix extends ComparedMix {
  readonly name: string;
}

export function CompareMixes({ a, b }: { a: NamedMix; b: NamedMix }) {
  const t = words().versions.comparison;
  const { fixed, number } = words().figures;
  const { foods, windows, whole } = compareMixes(a, b);
  const unnamed = [a, b].flatMap((s) => s.problem.foods.flatMap((f) => (f.name || !f.ref ? [] : f.ref)));
  const known = useReferenceFoods(unnamed);
  const nameOf = (f: { id: string; name?: string; ref?: string }) =>
    f.name ?? (f.ref && known.get(f.ref)?.name) ?? f.id;
  const names = { a: a.name, b: b.name };
  const unpriced = [
    ...new Set([whole.a, whole.b].flatMap((w) => (w.price.missing ?? []).map((f) => nameOf(f)))),
  ];

  return (
    <div className="compare">
      <table className="compare-whole">
        <caption className="sr-only">{t.whole}</caption>
        <thead>
          <tr>
            <td />
            <th scope="col">
              <CompareSign of="a" /> {a.name}
            </th>
            <th scope="col">
              <CompareSign of="b" /> {b.name}
            </th>
          </tr>
        </thead>
        <tbody>
          <Line title={t.rules} of={(w) => rulesWords(w)} whole={whole} />
          <Line title={t.chance} of={chanceWords} whole={whole} />
          <Line title={t.foods} of={(w) => number(w.foods)} whole={whole} />
          <Line
            title={t.variety}
            of={(w) => (w.variety === undefined ? t.none : fixed(w.variety, 1))}
            whole={whole}
          />
          <Line
            title={t.price}
            of={(w) => (w.price.perKg === undefined ? t.notKnown : fixed(w.price.perKg, 2))}
            whole={whole}
          />
          <tr>
            <th scope="row">{t.beside}</th>
            {[a, b].map((side, i) => (
              <td key={i === 0 ? 'a' : 'b'}>
                {side.problem.beside.map((f) => t.fed(nameOf(f), f.share_of_ration)).join('; ') || t.nothing}
              </td>
            ))}
          </tr>
        </tbody>
      </table>
      <p className="hint">{t.varietyHint}</p>
      {unpriced.length > 0 && (
        <details className="compare-unpriced">
          <summary>{t.unpriced(unpriced.length)}</summary>
          <p>{t.unpricedList(unpriced)}</p>
        </details>
      )}
      <div className="compare-pictures">
        <CompareShares foods={foods} nameOf={nameOf} second={b.name} />
        <CompareWindows windows={windows} names={names} />
      </div>
      <Figures comparison={{ foods, windows, whole }} names={names} nameOf={nameOf} />
    </div>
  );
}

interface LineProps {
  title: string;
  of(whole: Whole): string;
  whole: Comparison['whole'];
}

function Line({ title, of, whole }: LineProps) {
  return (
    <tr>
      <th scope="row">{title}</th>
      <td>{of(whole.a)}</td>
      <td>{of(whole.b)}</td>
    </tr>
  );
}

function rulesWords({ broken, total }: Whole): string {
  const t = words().versions.comparison;
  const rules = broken === 0 ? t.kept : t.broken(broken);
  return Math.abs(total - 100) < 0.05 ? rules : t.addsUp(rules, total);
}

function chanceWords({ allChance, unsure }: Whole): string {
  const t = words().versions.comparison;
  if (allChance === undefined) return t.noRanges;
  const said = t.percent(allChance * 100);
  return unsure ? t.asFarAsKnown(said) : said;
}

/** Every figure of the picture. */
function Figures({
  comparison: { foods, windows },
  names,
  nameOf,
}: {
  comparison: Comparison;
  names: Record<Of, string>;
  nameOf(food: { id: string; name?: string; ref?: string }): string;
}) {
  const t = words().versions.comparison;
  const { fixed } = words().figures;
  return (
    <details>
      <summary>{t.table}</summary>
      <div className="table-scroll">
        <table>
          <caption>{t.sharesCaption}</caption>
          <thead>
            <tr>
              <th scope="col">{t.food}</th>
              <th scope="col">{names.a}</th>
              <th scope="col">{names.b}</th>
              <th scope="col">{t.difference}</th>
            </tr>
          </thead>
          <tbody>
            {foods.map(({ key, food, share, difference }) => (
              <tr key={key}>
                <th scope="row">{nameOf(food)}</th>
                <td>{share.a === 0 ? t.none : fixed(share.a, 1)}</td>
                <td>{share.b === 0 ? t.none : fixed(share.b, 1)}</td>
                <td>{signed(difference)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        {windows.length > 0 && (
          <table>
            <caption>{t.contents}</caption>
            <thead>
              <tr>
                <th scope="col">{t.content}</th>
                <th scope="col">{t.range}</th>
                <th scope="col">{names.a}</th>
                <th scope="col">{names.b}</th>
              </tr>
            </thead>
            <tbody>
              {windows.map((row) => (
                <tr key={row.key}>
                  <th scope="row">{(row.on === 'mix' ? t.ofMix : t.ofRation)(row.title, row.unit)}</th>
                  <td>{windowWords(row)}</td>
                  <td>{standingWords(row.at.a)}</td>
                  <td>{standingWords(row.at.b)}</td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </div>
    </details>
  );
}

function standingWords(at: RuleStanding): string {
  const said = `${valueWords(at)} ${stateWords(at)}`;
  return at.unsure && at.value !== undefined ? words().versions.comparison.asFarAsKnown(said) : said;
}
