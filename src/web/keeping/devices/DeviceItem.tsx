/** One paired device: its name, when it was here, and the way out. */
import { useMutation } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { Button, Form, Label, TextField } from 'react-aria-components';
import { words } from '../../../words/words.ts';
import { AskFirst } from '../../shared/AskFirst.tsx';
import { FormFoot } from '../../shared/FormFoot.tsx';
import { useNow } from '../../shared/hooks/now.ts';
import { NameInput } from '../../shared/typing/NameInput.tsx';
import { clockOf } from '../../shared/words/clock.ts';
import { type PairedDevice, putOut, renameDevice } from '../../store/access.ts';

export function DeviceItem({ device, changed }: { device: PairedDevice; changed(): void }) {
  const [doing, setDoing] = useState<'naming' | 'asking'>();
  const now = useNow();
  const out = useMutation({ mutationFn: () => putOut(device.id), onSuccess: changed });
  const { name, thisOne } = device;
  const t = words().keeping.devices;
  return (
    <li aria-label={name}>
      <div className="device-head">
        <b>{name}</b>
        {thisOne && <span className="tag">{t.thisOne}</span>}
        <small>{t.seen(t.at(clockOf(device.pairedAt, now)), t.at(clockOf(device.seenAt, now)))}</small>
        <div className="button-row">
          <Button
            className="quiet-button"
            aria-label={t.renameOf(name)}
            onPress={() => setDoing(doing === 'naming' ? undefined : 'naming')}
          >
            {t.rename}
          </Button>
          <Button className="quiet-button" aria-label={t.putOutOf(name)} onPress={() => setDoing('asking')}>
            {t.putOut}
          </Button>
        </div>
      </div>
      {doing === 'naming' && (
        <Naming
          device={device}
          done={() => {
            setDoing(undefined);
            changed();
          }}
          leave={() => setDoing(undefined)}
        />
      )}
      {doing === 'asking' && (
        <AskFirst
          question={thisOne ? t.askThis : t.ask(name)}
          error={out.error}
          keep={t.keep}
          onKeep={() => setDoing(undefined)}
          lose={thisOne ? t.putThisOut : t.putOutOf(name)}
          onLose={() => out.mutate()}
        >
          {t.gone}
        </AskFirst>
      )}
    </li>
  );
}

function Naming(props: { device: PairedDevice; done(): void; leave(): void }) {
  const [name, setName] = useState(props.device.name);
  const rename = useMutation({
    mutationFn: () => renameDevice(props.device.id, name.trim()),
    onSuccess: props.done,
  });
  const nameless = name.trim() === '';
  const t = words().keeping.devices;
  function submit(event: FormEvent) {
    event.preventDefault();
    if (!nameless && !rename.isPending) rename.mutate();
  }
  return (
    <Form onSubmit={submit}>
      <TextField value={name} onChange={setName} isInvalid={nameless} autoFocus>
        <Label>{t.name}</Label>
        <NameInput autoComplete="off" most={40} />
        {nameless && <p className="field-error">{t.nameless}</p>}
      </TextField>
      <FormFoot error={rename.error} save={t.saveName} onLeave={props.leave} />
    </Form>
  );
}
