/**
 * The step before a limit of the animal's target gives way: whose it is, what it is and where it comes from. Only then
 * may the keeper make it their own. Escape, and what stands first, leave the limit as it is.
 */
import { useState } from 'react';
import { Button, Dialog, DialogTrigger, Heading, Modal, ModalOverlay } from 'react-aria-components';
import type { Mix } from '../../../household/model.ts';
import { limitOwners } from '../../../household/reckon/mix/own-limits.ts';
import type { Day } from '../../../kitchen/model.ts';
import { words } from '../../../words/words.ts';
import { today } from '../../shared/today.ts';
import { useMixDraft } from '../../store/mix-draft.tsx';
import { allProfiles } from '../../store/profiles.ts';
import { type LimitChange, stepLines, whoseWords } from './limit-words.ts';
import '../../shared/PickerDialog.css';
import './limits.css';

export function LimitStep(props: {
  label: string;
  /** What a screen reader says of the button. */
  spoken: string;
  mix: Mix;
  change: LimitChange;
  nameOf(id: string): string;
  /** Makes the change. @param on today, with which it is kept */
  act(on: Day): void;
}) {
  const { mix, change, nameOf, act } = props;
  const { house } = useMixDraft();
  const t = words().limits;
  const [open, setOpen] = useState(false);
  const owners = limitOwners(mix, house.animals);
  const target = allProfiles(house).find((p) => p.id === mix.profileId);
  const whose = whoseWords(owners, target?.name);
  const lines = stepLines(mix.problem, change, nameOf);
  const many = lines.filter((l) => l.source !== undefined).length > 1;

  return (
    <DialogTrigger isOpen={open} onOpenChange={setOpen}>
      <Button className="button" aria-label={props.spoken}>
        {props.label} …
      </Button>
      <ModalOverlay className="overlay" isDismissable>
        <Modal className="modal">
          <Dialog className="dialog limit-step" role="alertdialog">
            <Heading slot="title">{t.heading(many, whose)}</Heading>
            <ul className="limit-lines">
              {lines.map(({ words: line, source }) => (
                <li key={line}>
                  {line} <small>{source === undefined ? t.youAsked : t.source(source)}</small>
                </li>
              ))}
            </ul>
            <p>{t.about(many, owners)}</p>
            <div className="button-row">
              <Button className="button keep" autoFocus onPress={() => setOpen(false)}>
                {t.keep(many)}
              </Button>
              <Button
                className="quiet-button"
                onPress={() => {
                  setOpen(false);
                  // The dialog gives the keyboard back to its button in the next frame; what acts may take it further.
                  requestAnimationFrame(() => requestAnimationFrame(() => act(today())));
                }}
              >
                {t.makeOwn(many)}
              </Button>
            </div>
          </Dialog>
        </Modal>
      </ModalOverlay>
    </DialogTrigger>
  );
}
