/** What the keeper dries with: oven or dehydrator, its trays, and what it is usually set to. */
import { type FormEvent, useState } from 'react';
import { Button, Form } from 'react-aria-components';
import { Failed } from '../shared/Failed.tsx';
import { Radios } from '../shared/Radios.tsx';
import { useKitchen } from '../store/kitchen.ts';
import { asText, focusFault, LabelledNumber, readAbove0 } from './LabelledNumber.tsx';
import { trayArea } from './view-model.ts';

const DEVICES = [
  ['oven', 'Oven'],
  ['dehydrator', 'Dehydrator'],
] as const;
const HOW = [
  ['cm', 'Width and length'],
  ['dm2', 'Area'],
] as const;
/** °C to begin with: common practice in an oven, the low end of what is published for vegetables in a dehydrator. */
const USUAL = { oven: 90, dehydrator: 57 };

export function DryerSettings({ onDone }: { onDone?(): void }) {
  const { kitchen, change, error } = useKitchen();
  /** As it stood when the form was opened: only what is changed here is changed. */
  const [opened, setOpened] = useState(kitchen);
  const kept = opened.dryer;
  const [device, setDevice] = useState<'oven' | 'dehydrator'>(kept?.device ?? 'oven');
  const [trays, setTrays] = useState(asText(kept?.trays));
  const [how, setHow] = useState<'cm' | 'dm2'>(kept ? 'dm2' : 'cm');
  const [width, setWidth] = useState('');
  const [length, setLength] = useState('');
  const [area, setArea] = useState(asText(kept?.trayArea, 2));
  const [celsius, setCelsius] = useState(asText(kept?.celsius ?? USUAL.oven));
  const [tried, setTried] = useState(false);
  const [done, setDone] = useState(false);

  const read = {
    trays: readAbove0(trays, 'Trays', { whole: true, max: 100 }),
    width: readAbove0(width, 'Width', { max: 200 }),
    length: readAbove0(length, 'Length', { max: 200 }),
    area: readAbove0(area, 'Area', { max: 1000 }),
    celsius: readAbove0(celsius, 'Usual temperature', { max: 250 }),
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
        label="What you dry with"
        value={device}
        options={DEVICES}
        onChange={(next) => {
          if (asText(USUAL[device]) === celsius) setCelsius(asText(USUAL[next]));
          setDevice(next);
        }}
      />
      <div className="fields">
        <LabelledNumber label="Trays" value={trays} onChange={setTrays} error={fault(read.trays)} />
        <LabelledNumber
          label="Usual temperature"
          unit="°C"
          value={celsius}
          onChange={setCelsius}
          error={fault(read.celsius)}
        />
      </div>
      <Radios label="Size of one tray" value={how} options={HOW} onChange={setHow} />
      <div className="fields">
        {how === 'cm' ? (
          <>
            <LabelledNumber
              label="Width"
              unit="cm"
              value={width}
              onChange={setWidth}
              error={fault(read.width)}
            />
            <LabelledNumber
              label="Length"
              unit="cm"
              value={length}
              onChange={setLength}
              error={fault(read.length)}
              hint={dm2 === undefined ? undefined : `${asText(dm2, 2)} dm²`}
            />
          </>
        ) : (
          <LabelledNumber
            label="Area"
            unit="dm²"
            value={area}
            onChange={setArea}
            error={fault(read.area)}
            hint="A tray of 40 × 30 cm has 12 dm²."
          />
        )}
      </div>
      <Failed error={error} />
      <Button type="submit" className="button">
        Keep the dryer
      </Button>
      <p className="hint" aria-live="polite">
        {done && !error ? 'Kept.' : ''}
      </p>
    </Form>
  );
}
