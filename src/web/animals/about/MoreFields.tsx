/** What may be said of an animal beside the essential: each helps to judge its weight and its food. */
import { Label, TextArea, TextField } from 'react-aria-components';
import type { Animal } from '../../../household/model.ts';
import { words } from '../../../words/words.ts';
import { Choice } from '../../shared/Choice.tsx';
import { NumberInput } from '../../shared/NumberInput.tsx';

export type MoreOf = Pick<Animal, 'sex' | 'wheel' | 'room' | 'daylight' | 'usualGrams' | 'tub' | 'notes'>;

export function MoreFields({ more, onChange }: { more: MoreOf; onChange(next: MoreOf): void }) {
  const { animals, common } = words();
  const t = animals.form;
  const set = (part: MoreOf) => onChange({ ...more, ...part });
  const yesOrNo = (value: boolean | undefined) => (value === undefined ? '' : value ? 'yes' : 'no');
  const said = (value: '' | 'yes' | 'no') => (value === '' ? undefined : value === 'yes');

  return (
    <details className="more-fields">
      <summary>{t.more}</summary>
      <p className="hint">{t.moreHint}</p>
      <div className="fields">
        <Choice
          label={t.sex}
          value={more.sex ?? ''}
          options={[
            ['', t.notSaid],
            ['female', animals.sexes.female],
            ['male', animals.sexes.male],
          ]}
          onChange={(sex) => set({ sex: sex === '' ? undefined : sex })}
        />
        <Choice
          label={t.wheel}
          value={yesOrNo(more.wheel)}
          options={[
            ['', t.notSaid],
            ['yes', common.yes],
            ['no', common.no],
          ]}
          onChange={(wheel) => set({ wheel: said(wheel) })}
        />
        <Choice
          label={t.daylight}
          value={yesOrNo(more.daylight)}
          options={[
            ['', t.notSaid],
            ['yes', t.daylights.yes],
            ['no', t.daylights.no],
          ]}
          onChange={(daylight) => set({ daylight: said(daylight) })}
        />
        <NumberInput
          label={t.room}
          measure="heat"
          min={-30}
          max={60}
          step={1}
          decimals={1}
          value={more.room}
          onCommit={(room) => set({ room })}
          hint={t.roomHint}
        />
        <NumberInput
          label={t.usual}
          measure="mass"
          min={1}
          max={2000}
          step={1}
          decimals={1}
          value={more.usualGrams}
          onCommit={(usualGrams) => set({ usualGrams })}
          hint={t.usualHint}
        />
        <NumberInput
          label={t.tub}
          measure="mass"
          min={0.1}
          max={5000}
          step={1}
          decimals={1}
          value={more.tub}
          onCommit={(tub) => set({ tub })}
          hint={t.tubHint}
        />
        <TextField
          className="wide"
          value={more.notes ?? ''}
          onChange={(notes) => set({ notes: notes === '' ? undefined : notes })}
        >
          <Label>{t.notes}</Label>
          <TextArea rows={3} maxLength={4000} />
        </TextField>
      </div>
    </details>
  );
}
