/** Two mixes in one picture: what they are as a whole, their foods and their windows; and the same as a table. */
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
        <caption className="sr-only">The two mixes as a whole</caption>
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
          <Line title="Rules" of={(w) => rulesWords(w)} whole={whole} />
          <Line title="Chance of all windows at once" of={chanceWords} whole={whole} />
          <Line title="Foods" of={(w) => String(w.foods)} whole={whole} />
          <Line title="Variety, in equal foods" of={(w) => w.variety?.toFixed(1) ?? 'none'} whole={whole} />
          <Line
            title="Price per kg of mix"
            of={(w) => w.price.perKg?.toFixed(2) ?? 'not known'}
            whole={whole}
          />
          <tr>
            <th scope="row">Fed beside</th>
            {[a, b].map((side, i) => (
              <td key={i === 0 ? 'a' : 'b'}>
                {side.problem.beside
                  .map((f) => `${nameOf(f)}, ${Number(f.share_of_ration.toFixed(1))} %`)
                  .join('; ') || 'nothing'}
              </td>
            ))}
          </tr>
        </tbody>
      </table>
      <p className="hint">
        Variety is how many foods in equal shares would be as varied: the Hill number of order 2 (Hill 1973,
        Ecology 54:427-432).
      </p>
      {unpriced.length > 0 && (
        <details className="compare-unpriced">
          <summary>Foods without a price ({unpriced.length})</summary>
          <p>{unpriced.join(', ')}. With a price for each, the price of the mix is known.</p>
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
  const words = broken === 0 ? '✓ all kept' : `! ${broken} broken`;
  return Math.abs(total - 100) < 0.05 ? words : `${words}; adds up to ${Number(total.toFixed(1))} %`;
}

function chanceWords({ allChance, unsure }: Whole): string {
  if (allChance === undefined) return 'no windows asked for';
  return `${Math.round(allChance * 100)} %${unsure ? ', as far as known' : ''}`;
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
  return (
    <details>
      <summary>All figures as a table</summary>
      <div className="table-scroll">
        <table>
          <caption>Shares, percent of the mix as weighed</caption>
          <thead>
            <tr>
              <th scope="col">Food</th>
              <th scope="col">{names.a}</th>
              <th scope="col">{names.b}</th>
              <th scope="col">Difference</th>
            </tr>
          </thead>
          <tbody>
            {foods.map(({ key, food, share, difference }) => (
              <tr key={key}>
                <th scope="row">{nameOf(food)}</th>
                <td>{share.a === 0 ? 'none' : share.a.toFixed(1)}</td>
                <td>{share.b === 0 ? 'none' : share.b.toFixed(1)}</td>
                <td>{signed(difference)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        {windows.length > 0 && (
          <table>
            <caption>Contents under a rule, and the chance to keep it</caption>
            <thead>
              <tr>
                <th scope="col">Content</th>
                <th scope="col">Window</th>
                <th scope="col">{names.a}</th>
                <th scope="col">{names.b}</th>
              </tr>
            </thead>
            <tbody>
              {windows.map((row) => (
                <tr key={row.key}>
                  <th scope="row">
                    {row.title} of the {row.on}, {row.unit}
                  </th>
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
  return `${valueWords(at)} ${stateWords(at)}${at.unsure && at.value !== undefined ? ', as far as known' : ''}`;
}
