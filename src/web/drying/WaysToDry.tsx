/** How hot and how long, as practised and as published, each with its source. */
import type { DryingWay } from '../../kitchen/drying/drying-practice.ts';
import { words } from '../../words/words.ts';

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
  const { plan: t, known } = words().drying;
  return (
    <fieldset className="dry-options">
      <legend>{t.howHot}</legend>
      {ways.map((w, i) => (
        <label key={w.known} className="dry-option">
          <input type="radio" name="way" checked={i === at} onChange={() => onChoose(i)} />
          <span>
            <strong>{t.way(t.degrees(...w.celsius), t.hours(...w.hours))}</strong>{' '}
            <span className="tag">{known[w.known]}</span>
            <span className="dry-test">{t.doneWhen(w.dry)}</span>
            <small>{w.source}</small>
          </span>
        </label>
      ))}
    </fieldset>
  );
}
