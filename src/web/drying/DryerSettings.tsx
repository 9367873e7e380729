/** What the keeper dries with: oven or dehydrator, its trays, and what it is usually set to. */
import { type FormEvent, useState } from 'react';
import { Button, Form } from 'react-aria-components';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { Radios } from '../shared/Radios.tsx';
import { useKitchen } from '../store/kitchen.ts';
import { asText, focusFault, LabelledNumber, readAbove0 } from './LabelledNumber.tsx';
import { trayArea } from './view-model.ts';

/** °C to begin with: common practice in an oven, the low end of what is published for vegetables in a dehydrator. */
const USUAL = { oven: 90, dehydrator: 57 };

export function DryerSettings({ onDone }: { onDone?(): void }) {
  const { kitchen, change, error } = useKitchen();
  const t = words().drying.dryer;
  /** As it stood when the form was opened: only what is changed here is changed. */
  const [opened, setOpened] = useState(kitchen);
  const kept = opened.dryer;
  const [device, setDevice] = useState<'oven' | 'dehydrator'>(kept?.device ?? 'oven');
  const [trays, setTrays] = useState(asText(kept?.trays));
  const [how, setHow] = useState<'cm' | 'dm2'>(kept ? 'dm2' : 'cm');
  const [width, setWidth] = useState('');
  const [length, setLength] = useState('');
  const [area, setArea] = useState(asText(kept?.trayArea, 2));
  const [celsius, setCelsius] = useState(asText(kept?.celsius ?? USUAL.oven, 1, 'heat'));
  const [tried, setTried] = useState(false);
  const [done, setDone] = useState(false);

  const read = {
    trays: readAbove0(trays, t.trays, { whole: true, max: 100 }),
    width: readAbove0(width, t.width, { max: 200 }),
    length: readAbove0(length, t.length, { max: 200 }),
    area: readAbove0(area, t.area, { max: 1000 }),
    celsius: readAbove0(celsius, t.usual, { max: 250, measure: 'heat' }),
  };
  const dm2 =
    how === 'dm2'
      ? read.area.value
      : read.width.value !== undefined && read.length.value !== undefined
        ? trayArea(read.width.value, read.length.value)
        : undefined;
  const fault = (r: { fault?: string }) => (tried ? r.fault : undefined);

  function submit(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    setTried(true);
    setDone(false);
    if (read.trays.value === undefined || dm2 === undefined || read.celsius.value === undefined)
      return focusFault(event.currentTarget);
    const dryer = { device, trays: read.trays.value, trayArea: dm2, celsius: read.celsius.value };
    change({ dryer }, opened);
    setOpened({ ...opened, dryer });
    setDone(true);
    onDone?.();
  }

  return (
    <Form className="dry-dryer" onSubmit={submit}>
      <Radios
        label={t.with}
        value={device}
        options={[
          ['oven', t.oven],
          ['dehydrator', t.dehydrator],
        ]}
        onChange={(next) => {
          if (asText(USUAL[device], 1, 'heat') === celsius) setCelsius(asText(USUAL[next], 1, 'heat'));
          setDevice(next);
        }}
      />
      <div className="fields">
        <LabelledNumber label={t.trays} value={trays} onChange={setTrays} error={fault(read.trays)} />
        <LabelledNumber
          label={t.usual}
          measure="heat"
          value={celsius}
          onChange={setCelsius}
          error={fault(read.celsius)}
        />
      </div>
      <Radios
        label={t.size}
        value={how}
        options={[
          ['cm', t.byWidth],
          ['dm2', t.byArea],
        ]}
        onChange={setHow}
      />
      <div className="fields">
        {how === 'cm' ? (
          <>
            <LabelledNumber
              label={t.width}
              unit={t.cm}
              value={width}
              onChange={setWidth}
              error={fault(read.width)}
            />
            <LabelledNumber
              label={t.length}
              unit={t.cm}
              value={length}
              onChange={setLength}
              error={fault(read.length)}
              hint={dm2 === undefined ? undefined : t.areaIs(dm2)}
            />
          </>
        ) : (
          <LabelledNumber
            label={t.area}
            unit={t.dm2}
            value={area}
            onChange={setArea}
            error={fault(read.area)}
            hint={t.areaHint}
          />
        )}
      </div>
      <Failed error={error} />
      <Button type="submit" className="button">
        {t.keep}
      </Button>
      <p className="hint" aria-live="polite">
        {done && !error ? t.kept : ''}
      </p>
    </Form>
  );
}
