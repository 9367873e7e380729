/** Pairs this device: by the code that a paired device or the terminal shows, or by a link that brings it along. */
import { useMutation } from '@tanstack/react-query';
import { type FormEvent, useState, useSyncExternalStore } from 'react';
import { Button, Form, Input, Label, TextField } from 'react-aria-components';
import { Failed } from '../shared/Failed.tsx';
import { pairDevice } from '../store/access.ts';
import { forgetSecret, secretInAddress } from './secret.ts';
import './pairing.css';

export function PairingScreen() {
  const secret = useSyncExternalStore(onAddress, secretInAddress);
  const [code, setCode] = useState('');
  const [name, setName] = useState(suggestedName);
  const pair = useMutation({
    mutationFn: () => pairDevice(secret ?? code, name.trim()),
    networkMode: 'always',
    onSuccess() {
      forgetSecret();
      // Begun anew, as a device that is in.
      window.location.reload();
    },
  });
  const [tried, setTried] = useState(false);
  const codeless = secret === undefined && code.trim() === '';
  const nameless = name.trim() === '';

  function submit(event: FormEvent) {
    event.preventDefault();
    setTried(true);
    if (!codeless && !nameless && !pair.isPending) pair.mutate();
  }

  return (
    <main id="main" className="page pairing">
      <h1>Pair this device</h1>
      <p>
        This household is opened only on devices that are paired. Each is paired once, and can be put out
        again on any other.
      </p>
      <Form className="panel" onSubmit={submit}>
        {secret === undefined ? (
          <>
            <p>
              The code is shown where Pouchful was started, and on a paired device under{' '}
              <b>Household › Devices</b> when you press <b>Pair a device</b>.
            </p>
            <TextField value={code} onChange={setCode} isInvalid={tried && codeless} autoFocus>
              <Label>Pairing code</Label>
              <Input
                className="pairing-code"
                autoComplete="off"
                autoCapitalize="characters"
                spellCheck={false}
                placeholder="ABCD-EFGH"
              />
              {tried && codeless && <p className="field-error">Type the code.</p>}
            </TextField>
          </>
        ) : (
          <p>The link brought the code along.</p>
        )}
        <TextField value={name} onChange={setName} isInvalid={tried && nameless} maxLength={40}>
          <Label>What is this device called?</Label>
          <Input autoComplete="off" placeholder="Kitchen phone" />
          {tried && nameless && <p className="field-error">Give it a name, such as Kitchen phone.</p>}
        </TextField>
        <p className="hint">The name stands beside what is changed here.</p>
        <Failed error={pair.error} />
        {pair.error && secret !== undefined && (
          <p>
            <Button className="quiet-button" onPress={forgetSecret}>
              Type a code instead
            </Button>
          </p>
        )}
        <div className="button-row">
          <Button type="submit" className="button strong">
            {pair.isPending ? 'Pairing…' : 'Pair this device'}
          </Button>
        </div>
      </Form>
    </main>
  );
}

function onAddress(changed: () => void): () => void {
  window.addEventListener('hashchange', changed);
  return () => window.removeEventListener('hashchange', changed);
}

function suggestedName(): string {
  return /\b(?:iPad|Tablet)\b/i.test(navigator.userAgent)
    ? 'Tablet'
    : /\bMobi|iPhone|Android/i.test(navigator.userAgent)
      ? 'Phone'
      : 'Computer';
}
