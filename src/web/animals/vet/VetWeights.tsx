/** Its weights as a picture, and the key ones of them in figures. */
import { speciesKind } from '../../../care/animal/species.ts';
import { ADULT_WEIGHTS } from '../../../care/figures/adult-weights.ts';
import type { WeightAlert } from '../../../care/weight/model.ts';
import { sourceWords } from '../../../foods/source-words.ts';
import type { Animal } from '../../../household/model.ts';
import { LOOKS_BACK, type VetPage, type VetWeight } from '../../../household/reckon/care/vet-page.ts';
import { words } from '../../../words/words.ts';
import { Fact } from '../../shared/Fact.tsx';
import { HEIGHT, WIDTH, weightsPicture } from './weights-picture.ts';

export function VetWeights({ animal, page }: { animal: Animal; page: VetPage }) {
  const t = words().vetPage.weights;
  return (
    <section className="vet-weights">
      <h4>{t.title}</h4>
      <Picture page={page} />
      <Figures animal={animal} page={page} />
      {(['loss', 'gain'] as const).map((way) => {
        // Two rules that find one change make it no more than one.
        const alert = page.weights.story.alerts.find((a) => a.way === way);
        return (
          alert && (
            <p key={way}>
              <b>{alertWords(alert, page)}</b>
            </p>
          )
        );
      })}
    </section>
  );
}

function Picture({ page }: { page: VetPage }) {
  const { vetPage, figures: f } = words();
  const t = vetPage.weights;
  const picture = weightsPicture(page);
  if (!picture) return <p>{t.none}</p>;
  const { dots, trend, band, changes, grams, days, lowest, highest, base, left } = picture;
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by keyboard */}
      <section className="vet-picture" tabIndex={0} aria-label={t.title}>
        <svg
          viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
          role="img"
          aria-label={t.picture(dots.length, lowest, highest)}
        >
          {grams.map(({ y, grams: g }) => (
            <g key={g}>
              <line className="vet-grid" x1={left} x2={WIDTH} y1={y} y2={y} />
              <text x={left - 6} y={y + 4} textAnchor="end">
                {f.grams(g, 1)}
              </text>
            </g>
          ))}
          {days.map(({ x, day }) => (
            <text key={day} x={x} y={HEIGHT - 6} textAnchor="middle">
              {f.shortDay(day).replace(/^\S+ /, '')}
            </text>
          ))}
          <line className="vet-axis" x1={left} x2={WIDTH} y1={base} y2={base} />
          {changes.map(({ at, key }) => (
            <line key={key} className="vet-change" x1={at} x2={at} y1={0} y2={base} />
          ))}
          {band && <path className="vet-band" d={band} />}
          {trend && <path className="vet-trend" d={trend} />}
          {dots.map(({ x, y, key }) => (
            <circle key={key} cx={x} cy={y} r={2.4} />
          ))}
        </svg>
      </section>
      <p className="vet-small">{t.key}</p>
    </>
  );
}

function Figures({ animal, page }: { animal: Animal; page: VetPage }) {
  const { vetPage, figures: f } = words();
  const t = vetPage.weights;
  const { last, month, quarter, lowest, highest } = page.weights;
  const grown = ADULT_WEIGHTS[speciesKind(animal.species)];
  const on = ({ grams, day }: VetWeight) => t.on(grams, f.day(day, page.today));
  const before = (days: number, weight: VetWeight | undefined) =>
    weight &&
    last && (
      <Fact
        name={t.before(days)}
        words={t.change(weight.grams, (100 * (last.grams - weight.grams)) / weight.grams)}
      />
    );
  return (
    <dl className="vet-facts">
      {last && <Fact name={t.last} words={on(last)} />}
      {before(30, month)}
      {before(LOOKS_BACK, quarter)}
      {lowest && highest && lowest.grams < highest.grams && (
        <>
          <Fact name={t.lowest} words={on(lowest)} />
          <Fact name={t.highest} words={on(highest)} />
        </>
      )}
      {animal.usualGrams !== undefined && <Fact name={t.usual} words={f.grams(animal.usualGrams, 1)} />}
      {grown && <Fact name={t.grown} words={t.span(grown.low, grown.high, sourceWords(grown.source))} />}
    </dl>
  );
}

function alertWords({ rule, way, percent, since, from, to }: WeightAlert, { today }: VetPage): string {
  const { vetPage, figures: f } = words();
  const t = vetPage.weights;
  if (rule === 'growth' && way === 'loss') return t.behind(to);
  return (way === 'loss' ? t.lost : t.gained)(percent, f.day(since, today), from, to);
}
