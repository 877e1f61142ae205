import type { ReactNode } from 'react';
import { Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { words } from '../words';
import { Do } from './words';

/** A sheet of paper over the page. Escape or a press beside it closes it. */
export function Sheet(props: {
  title: string;
  open: boolean;
  onClose: () => void;
  children: ReactNode;
}) {
  return (
    <ModalOverlay
      className="veil"
      isOpen={props.open}
      onOpenChange={(open) => !open && props.onClose()}
      isDismissable
    >
      <Modal className="sheet-paper">
        <Dialog>
          <Heading slot="title" level={2}>
            {props.title}
          </Heading>
          {props.children}
          <div className="row">
            <Do onPress={props.onClose}>{words.controls.close}</Do>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
