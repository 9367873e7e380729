/** What was seen of a new food, noted by one press; weights beside it where somebody weighed. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import { type Offering, SEEN, type Seen, type Trial } from '../../../care/model.ts';
import { nextOffer } from '../../../care/trials/plan.ts';
import { plusDays } from '../../../kitchen/days.ts';
import { words } from '../../../words/words.ts';
import { NumberInput } from '../../shared/NumberInput.tsx';
import { Radios } from '../../shared/Radios.tsx';
import { today } from '../../shared/today.ts';

export function NoteSeen({ trial, onNote }: { trial: Trial; onNote(offering: Offering): void }) {
  const { trials, figures: f } = words();
  const t = trials.note;
  const now = today();
  const before = plusDays(now, -1);
  // What was offered in the evening is looked at in the morning.
  const [day, setDay] = useState(() => (nextOffer(trial) === before ? before : now));
  const noted = trial.offerings.find((o) => o.on === day);

  function note(seen: Seen) {
    const { grams, left, note } = noted ?? {};
    onNote({
      on: day,
      seen,
      ...(grams !== undefined && { grams }),
      ...(left !== undefined && { left }),
      ...(note !== undefined && { note }),
    });
  }

  return (
    <section className="note-seen" aria-label={t.heading}>
      <h4>{t.heading}</h4>
      <Radios
        label={t.offered}
        value={day}
        options={[
          [now, t.today],
          [before, t.yesterday],
        ]}
        onChange={setDay}
      />
      <div className="seen-choices">
        {SEEN.map((seen) => (
          <Button
            key={seen}
            className={`seen-choice ${seen === 'upset' ? 'grave' : ''}`}
            aria-pressed={noted?.seen === seen}
            onPress={() => note(seen)}
          >
            <strong>{t.seen[seen]}</strong>
            <small>{t.help[seen]}</small>
          </Button>
        ))}
      </div>
      <p className="hint" role="status">
        {noted && t.noted(t.seen[noted.seen], f.shortDay(day))}
      </p>
      {noted?.seen === 'hoarded' && <p className="hint">{t.hoarding}</p>}
      {noted && noted.seen !== 'upset' && (
        <Weights key={day} offering={noted} planned={trial.grams} onNote={onNote} />
      )}
    </section>
  );
}

/** g offered and g left: the look then counts by weight. */
function Weights(props: {
  offering: Offering;
  planned: number | undefined;
  onNote(offering: Offering): void;
}) {
  const t = words().trials.note;
  const { offering, planned, onNote } = props;
  const [grams, setGrams] = useState(offering.grams ?? planned);
  const [left, setLeft] = useState(offering.left);
  return (
    <details className="seen-weights" open={offering.left !== undefined}>
      <summary>{t.weigh}</summary>
      <div className="fields">
        <NumberInput
          label={t.offeredGrams}
          measure="mass"
          min={0.01}
          value={grams}
          required
          onCommit={setGrams}
        />
        <NumberInput label={t.leftGrams} measure="mass" min={0} max={grams} value={left} onCommit={setLeft} />
        <Button
          className="button small"
          isDisabled={grams === undefined || left === undefined}
          onPress={() => onNote({ ...offering, grams, left })}
        >
          {t.saveWeights}
        </Button>
      </div>
    </details>
  );
}
