import { type ReactNode, Suspense } from 'react';
import { Button, Dialog, DialogTrigger, Heading, Popover } from 'react-aria-components';

/** A value in a sentence; pressed, it opens a slip of paper on which it is changed. */
export function Slip(props: {
  /** What the value is, for the slip's title and for a screen reader. */
  label: string;
  /** The value as the sentence reads it. */
  shown: string;
  held?: boolean;
  disabled?: boolean;
  children: (close: () => void) => ReactNode;
}) {
  return (
    <DialogTrigger>
      <Button
        className={props.held ? 'value held' : 'value'}
        isDisabled={props.disabled ?? false}
        aria-label={`${props.label}: ${props.shown}`}
      >
        {props.shown}
      </Button>
      <Popover className="slip" offset={6} containerPadding={16}>
        <Dialog>
          {({ close }) => (
            <>
              <Heading slot="title" level={2}>
                {props.label}
              </Heading>
              <Suspense fallback={null}>{props.children(close)}</Suspense>
            </>
          )}
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}
