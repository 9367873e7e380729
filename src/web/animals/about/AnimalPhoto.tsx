/** The picture of an animal: chosen or taken, made small in the page, and taken away again. */
import { useState } from 'react';
import { Button } from 'react-aria-components';
import type { Photo } from '../../../care/model.ts';
import type { Animal } from '../../../household/model.ts';
import { words } from '../../../words/words.ts';
import { Failed } from '../../shared/Failed.tsx';
import { focusWhenThere } from '../../shared/focus.ts';
import { useRemove, useSave } from '../../store/household.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { smallJpeg } from './small-jpeg.ts';

export function AnimalPhoto({ animal }: { animal: Animal }) {
  const { house } = useMixDraft();
  const t = words().animals.photo;
  const save = useSave('photos');
  const erase = useRemove('photos');
  const [working, setWorking] = useState(false);
  const [fault, setFault] = useState<string>();
  const [said, setSaid] = useState('');
  /** The one that was just removed, to bring it back. */
  const [removed, setRemoved] = useState<Photo>();
  const photo = house.photos.find((p) => p.id === animal.id);

  async function take(file: File) {
    setFault(undefined);
    setSaid('');
    setWorking(true);
    try {
      const jpeg = await smallJpeg(file);
      save.mutate({ id: animal.id, jpeg }, photo, {
        onSuccess: () => {
          setRemoved(undefined);
          setSaid(t.kept);
        },
      });
    } catch {
      setFault(t.noPicture(file.name));
    } finally {
      setWorking(false);
    }
  }

  function remove(gone: Photo) {
    setFault(undefined);
    erase.mutate(gone, {
      onSuccess: () => {
        setRemoved(gone);
        setSaid(t.removed);
        focusWhenThere('.bring-picture-back');
      },
    });
  }

  function bringBack(gone: Photo) {
    save.mutate(gone, undefined, {
      onSuccess: () => {
        setRemoved(undefined);
        setSaid(t.kept);
        focusWhenThere('.remove-picture');
      },
    });
  }

  const field = (label: string, camera: boolean) => (
    <span className={`picture-file button small ${camera ? 'camera' : ''}`}>
      <span aria-hidden="true">{label}</span>
      <input
        type="file"
        accept="image/*"
        capture={camera ? 'environment' : undefined}
        aria-label={label}
        disabled={working}
        onChange={(e) => {
          const file = e.currentTarget.files?.[0];
          // The same file may be chosen again.
          e.currentTarget.value = '';
          if (file) void take(file);
        }}
      />
    </span>
  );

  return (
    <details className="animal-photo">
      <summary>{photo ? t.title : t.add}</summary>
      <div className="picture-files">
        {field(photo ? t.other : t.choose, false)}
        {field(t.take, true)}
        {photo && (
          <Button className="quiet-button remove-picture" onPress={() => remove(photo)}>
            {t.remove}
          </Button>
        )}
        {removed && !photo && (
          <Button className="quiet-button bring-picture-back" onPress={() => bringBack(removed)}>
            {t.bringBack}
          </Button>
        )}
      </div>
      <p className="hint" role="status">
        {working ? t.working : said || (photo ? '' : t.stays)}
      </p>
      {fault !== undefined && (
        <p role="alert" className="field-error">
          {fault}
        </p>
      )}
      <Failed error={save.error ?? erase.error} />
    </details>
  );
}
