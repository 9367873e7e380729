/** How hot and how long, as practised and as published, each with its source. */
import type { DryingWay } from '../../kitchen/drying/drying-practice.ts';
import { span } from './view-model.ts';

export function WaysToDry({
  ways,
  at,
  onChoose,
}: {
  ways: readonly DryingWay[];
  /** The place of the one that is chosen. */
  at: number;
  onChoose(at: number): void;
}) {
  return (
    <fieldset className="dry-options">
      <legend>How hot and how long</legend>
      {ways.map((w, i) => (
        <label key={w.known} className="dry-option">
          <input type="radio" name="way" checked={i === at} onChange={() => onChoose(i)} />
          <span>
            <strong>
              {span(w.celsius)} °C, {span(w.hours)} h
            </strong>{' '}
            <span className="tag">{w.known}</span>
            <span className="dry-test">Done when: {w.dry}.</span>
            <small>{w.source}</small>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
