/** One paired device: its name, when it was here, and the way out. */
import { useMutation } from '@tanstack/react-query';
import { type FormEvent, useState } from 'react';
import { Button, Form, Input, Label, TextField } from 'react-aria-components';
import { AskFirst } from '../../shared/AskFirst.tsx';
import { FormFoot } from '../../shared/FormFoot.tsx';
import { useNow } from '../../shared/hooks/now.ts';
import { clockOf } from '../../shared/words/clock.ts';
import { type PairedDevice, putOut, renameDevice } from '../../store/access.ts';

export function DeviceItem({ device, changed }: { device: PairedDevice; changed(): void }) {
  const [doing, setDoing] = useState<'naming' | 'asking'>();
  const now = useNow();
  const out = useMutation({ mutationFn: () => putOut(device.id), onSuccess: changed });
  const { name, thisOne } = device;
  return (
    <li aria-label={name}>
      <div className="device-head">
        <b>{name}</b>
        {thisOne && <span className="tag">this device</span>}
        <small>
          Paired {when(device.pairedAt, now)}, last here {when(device.seenAt, now)}.
        </small>
        <div className="button-row">
          <Button
            className="quiet-button"
            aria-label={`Rename ${name}`}
            onPress={() => setDoing(doing === 'naming' ? undefined : 'naming')}
          >
            Rename
          </Button>
          <Button className="quiet-button" aria-label={`Put out ${name}`} onPress={() => setDoing('asking')}>
            Put out
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
          question={thisOne ? 'Put this device out?' : `Put out ${name}?`}
          error={out.error}
          keep="Keep it"
          onKeep={() => setDoing(undefined)}
          lose={thisOne ? 'Put this device out' : `Put out ${name}`}
          onLose={() => out.mutate()}
        >
          It can open the household no more, from this moment on. To come in again it must be paired anew.
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
  function submit(event: FormEvent) {
    event.preventDefault();
    if (!nameless && !rename.isPending) rename.mutate();
  }
  return (
    <Form onSubmit={submit}>
      <TextField value={name} onChange={setName} isInvalid={nameless} maxLength={40} autoFocus>
        <Label>Name of the device</Label>
        <Input autoComplete="off" />
        {nameless && <p className="field-error">Give it a name.</p>}
      </TextField>
      <FormFoot error={rename.error} save="Save name" onLeave={props.leave} />
    </Form>
  );
}

/** "at 14:30", with the day where it is not today. */
function when(at: string, now: number): string {
  return `at ${clockOf(at, now)}`;
}
