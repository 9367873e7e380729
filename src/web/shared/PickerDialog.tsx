/** A button that opens a dialog over the page, to be left by "Done". */

import type { ReactNode } from 'react';
import { Button, Dialog, DialogTrigger, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { words } from '../../words/words.ts';
import './PickerDialog.css';

export function PickerDialog(props: {
  label: string;
  title: string;
  className?: string;
  children: ReactNode;
}) {
  return (
    <DialogTrigger>
      <Button className={`button ${props.className ?? ''}`}>{props.label}</Button>
      <ModalOverlay className="overlay" isDismissable>
        <Modal className="modal">
          <Dialog className="dialog">
            {({ close }) => (
              <>
                <div className="dialog-head">
                  <Heading slot="title">{props.title}</Heading>
                  <Button className="quiet-button" onPress={close}>
                    {words().shared.done}
                  </Button>
                </div>
                {props.children}
              </>
            )}
          </Dialog>
        </Modal>
      </ModalOverlay>
    </DialogTrigger>
  );
}
