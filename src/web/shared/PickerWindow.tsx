/** The dialog that a {@link PickerDialog} opens. */
import type { ReactNode } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { words } from '../../words/words.ts';
import './PickerDialog.css';

export function PickerWindow(props: { title: string; onClose(): void; children: ReactNode }) {
  return (
    <ModalOverlay className="overlay" isDismissable isOpen onOpenChange={(open) => open || props.onClose()}>
      <Modal className="modal">
        <Dialog className="dialog">
          <div className="dialog-head">
            <Heading slot="title">{props.title}</Heading>
            <Button className="quiet-button" onPress={props.onClose}>
              {words().shared.done}
            </Button>
          </div>
          {props.children}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
