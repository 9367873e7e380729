/** Ranges of grams a day under one another on one axis: published figures, rules of thumb, and what is fed now. */
import { scaleLinear } from 'd3-scale';
import { Button } from 'react-aria-components';
import { words } from '../../../words/words.ts';
import type { AmountRow } from './view-model.ts';

/** @param onTake a figure was pressed, g a day */
export function AmountPicture({
  rows,
  fed,
  onTake,
}: {
  rows: readonly AmountRow[];
  fed: number | undefined;
  onTake(grams: number): void;
}) {
  const { dailyFood: t, figures: f } = words();
  const ends = rows.flatMap((r) => [r.span?.high ?? 0, r.upTo ?? 0]);
  const x = scaleLinear()
    .domain([0, Math.max(1, ...ends)])
    .nice(5)
    .range([0, 100]);
  const percent = (value: number) => `${x(value)}%`;
  return (
    <div className="amount-picture">
      <ul aria-label={t.picture}>
        {rows.map((row) => (
          <li key={row.key} className={`amount-row ${row.kind}`}>
            <div className="amount-head">
              <h4>{row.name}</h4>
              {row.span && (
                <b>{row.kind === 'fed' ? f.grams(row.span.low, 1) : t.span(row.span.low, row.span.high)}</b>
              )}
            </div>
            {row.span && (
              <div className="amount-track" aria-hidden="true">
                {row.upTo !== undefined && (
                  <span
                    className="more"
                    style={{ left: percent(row.span.high), right: `${100 - x(row.upTo)}%` }}
                  />
                )}
                <span
                  className="range"
                  style={{ left: percent(row.span.low), right: `${100 - x(row.span.high)}%` }}
                />
                {fed !== undefined && <span className="now" style={{ left: percent(fed) }} />}
              </div>
            )}
            <div className="amount-foot">
              <div>
                {row.notes.map((note) => (
                  <p key={note} className="hint">
                    {note}
                  </p>
                ))}
              </div>
              {row.take !== undefined && row.take !== fed && (
                <Button
                  className="button small"
                  aria-label={`${t.take(row.take)}: ${row.name}`}
                  onPress={() => row.take !== undefined && onTake(row.take)}
                >
                  {t.take(row.take)}
                </Button>
              )}
            </div>
          </li>
        ))}
      </ul>
      <div className="amount-axis" aria-hidden="true">
        {x.ticks(5).map((tick) => (
          <span key={tick} style={{ left: percent(tick) }}>
            {f.number(f.mass(tick), 1)}
          </span>
        ))}
        <i>{f.massUnit}</i>
      </div>
    </div>
  );
}
