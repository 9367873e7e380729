/** What is left of a pack that is fed as it is: how it was counted, weighed anew, or all gone. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { PelletPack, PelletStock } from '../../household/reckon/cupboard/pellet-stock.ts';
import { dayInWords } from '../../kitchen/days.ts';
import type { Day, Lot } from '../../kitchen/model.ts';
import { sayGrams } from '../../kitchen/shopping/pack-weight.ts';
import { words } from '../../words/words.ts';
import { focusWhenThere } from '../shared/focus.ts';
import { NumberInput } from '../shared/NumberInput.tsx';
import { useSave } from '../store/household.ts';
import { lastsWords, openLong, packLeft } from './pellet-words.ts';

export function PelletLeft({ pack, stock, day }: { pack: PelletPack; stock: PelletStock; day: Day }) {
  const { pelletStock: t, common } = words();
  const save = useSave('lots');
  const [said, setSaid] = useState<{ words: string; before: Lot; after: Lot }>();
  const { lot } = pack;
  const old = openLong(pack, day);

  function keep(next: Lot, words: string) {
    save.mutate(next, lot, { onSuccess: () => setSaid({ words, before: lot, after: next }) });
  }

  return (
    <section className="pellet-left" aria-label={t.pack.title}>
      <h3 tabIndex={-1}>{t.pack.title}</h3>
      <p data-testid="pellet-left">
        <strong>{packLeft(pack)}</strong>
      </p>
      {pack.state !== 'barred' && pack.state !== 'empty' && <p>{lastsWords(stock, day)}</p>}
      <p className="hint">{counted(pack, day)}</p>
      <div className="pellet-weigh">
        <NumberInput
          key={lot.id}
          label={t.pack.weigh}
          measure="mass"
          min={0}
          max={Math.ceil(lot.grams)}
          step={1}
          decimals={1}
          placeholder={t.pack.notWeighed}
          hint={t.pack.weighHint}
          value={lot.left?.on === day ? lot.left.grams : undefined}
          onCommit={(grams) =>
            grams !== undefined &&
            keep(
              { ...lot, left: { grams, on: day } },
              grams === 0 ? t.pack.saidGone : t.pack.saidLeft(sayGrams(grams)),
            )
          }
        />
        {lot.left?.grams !== 0 && (
          <Button
            className="button"
            onPress={() => {
              keep({ ...lot, left: { grams: 0, on: day } }, t.pack.saidGone);
              focusWhenThere('.pellet-left h3');
            }}
          >
            {t.pack.allGone}
          </Button>
        )}
        {lot.openedOn === undefined && !lot.barred && pack.left > 0 && (
          <Button
            className="button"
            onPress={() => {
              keep({ ...lot, openedOn: day }, t.pack.opened(dayInWords(day, day)));
              focusWhenThere('.pellet-left h3');
            }}
          >
            {t.pack.open}
          </Button>
        )}
      </div>
      <div className="button-row">
        <p aria-live="polite" className={save.error ? 'field-error' : 'hint'}>
          {save.error ? save.error.message : said?.words}
        </p>
        {said && (
          <Button
            className="quiet-button small"
            onPress={() => {
              save.mutate(said.before, said.after);
              setSaid(undefined);
              focusWhenThere('.pellet-left h3');
            }}
          >
            {common.undo}
          </Button>
        )}
      </div>
      {old && <p className="notice-line">{old}</p>}
      <Keeping />
    </section>
  );
}

/** How long a pack keeps, and what that rests on. */
export function Keeping() {
  const t = words().pelletStock.keeping;
  return (
    <details>
      <summary>{t.more}</summary>
      <p>{t.text}</p>
      <p className="source">{t.source}</p>
    </details>
  );
}

function counted(pack: PelletPack, day: Day): string {
  const t = words().pelletStock.pack;
  const { start, since, weighed, fed, estimated, over } = pack;
  return [
    (weighed ? t.fromWeighed : t.fromBought)(sayGrams(start), dayInWords(since, day)),
    ...(fed > 0 ? [t.fed(sayGrams(fed))] : []),
    ...(estimated > 0 ? [t.guessed(sayGrams(Math.round(estimated)))] : []),
    ...(over > 0 ? [t.over(sayGrams(over))] : []),
  ].join(' ');
}
