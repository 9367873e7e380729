/** Pairs this device: by the code that a paired device or the terminal shows, or by a link that brings it along. */
import { useMutation } from '@tanstack/react-query';
import { type FormEvent, useState, useSyncExternalStore } from 'react';
import { Button, Form, Input, Label, TextField } from 'react-aria-components';
import { words } from '../../words/words.ts';
import { Failed } from '../shared/Failed.tsx';
import { NameInput } from '../shared/typing/NameInput.tsx';
import { LanguageChoice } from '../shared/words/LanguageChoice.tsx';
import { Sentence } from '../shared/words/Sentence.tsx';
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
  const t = words().pairing;
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
      <h1>{t.title}</h1>
      <p>{t.intro}</p>
      <LanguageChoice />
      <Form className="panel" onSubmit={submit}>
        {secret === undefined ? (
          <>
            <p>
              <Sentence of={t.where} with={{ b: (text) => <b>{text}</b> }} />
            </p>
            <TextField value={code} onChange={setCode} isInvalid={tried && codeless} autoFocus>
              <Label>{t.code}</Label>
              <Input
                className="pairing-code"
                autoComplete="off"
                autoCapitalize="characters"
                spellCheck={false}
                placeholder={t.codeExample}
              />
              {tried && codeless && <p className="field-error">{t.typeCode}</p>}
            </TextField>
          </>
        ) : (
          <p>{t.byLink}</p>
        )}
        <TextField value={name} onChange={setName} isInvalid={tried && nameless}>
          <Label>{t.name}</Label>
          <NameInput autoComplete="off" placeholder={t.example} most={40} />
          {tried && nameless && <p className="field-error">{t.nameless}</p>}
        </TextField>
        <p className="hint">{t.nameHint}</p>
        <Failed error={pair.error} />
        {pair.error && secret !== undefined && (
          <p>
            <Button className="quiet-button" onPress={forgetSecret}>
              {t.typeInstead}
            </Button>
          </p>
        )}
        <div className="button-row">
          <Button type="submit" className="button strong">
            {pair.isPending ? t.pairing : t.title}
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
  const t = words().pairing;
  if (/\b(?:iPad|Tablet)\b/i.test(navigator.userAgent)) return t.tablet;
  return /\bMobi|iPhone|Android/i.test(navigator.userAgent) ? t.phone : t.computer;
}
