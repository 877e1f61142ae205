import { useRef, useState } from 'react';
import { FieldError, Form, Input, Label, ProgressBar, TextField } from 'react-aria-components';
import { GREATEST_WIDTH, LEAST_WIDTH } from '../../handout/sheet';
import { formatPercent } from '../../readings/format';
import type { Session } from '../../session/types';
import type { StageHandle } from '../../stage';
import { Sheet } from '../controls/Sheet';
import { Do, Toggle } from '../controls/words';
import { offerFile } from '../state/offerFile';
import { words } from '../words';
import { makeStill, stillName } from './makeStill';
import type { Shown } from './shown';

type State =
  | { is: 'idle' }
  | { is: 'rendering'; share: number }
  | { is: 'saved'; name: string }
  | { is: 'stopped' }
  | { is: 'failed'; why: string };

/** Asks for a width, renders the still and offers it as a file. */
export default function StillSheet(props: {
  onClose: () => void;
  session: Session;
  pictures: readonly Shown[];
  stage: StageHandle | null;
}) {
  const [width, setWidth] = useState('3840');
  const [captioned, setCaptioned] = useState(true);
  const [wrong, setWrong] = useState(false);
  const [state, setState] = useState<State>({ is: 'idle' });
  const work = useRef<AbortController | null>(null);
  const said = words.still;

  const close = () => {
    work.current?.abort();
    props.onClose();
  };
  const save = async () => {
    const pixels = Number(width.trim());
    if (!Number.isInteger(pixels) || pixels < LEAST_WIDTH || pixels > GREATEST_WIDTH)
      return setWrong(true);
    const { stage, session, pictures } = props;
    if (!stage) return;
    const controller = new AbortController();
    work.current = controller;
    setState({ is: 'rendering', share: 0 });
    try {
      const blob = await makeStill({
        session,
        pictures,
        stage,
        width: pixels,
        captioned,
        signal: controller.signal,
        onProgress: (share) => setState({ is: 'rendering', share }),
      });
      const name = stillName(session, pictures);
      offerFile(blob, name);
      setState({ is: 'saved', name });
    } catch (error) {
      if (controller.signal.aborted) setState({ is: 'stopped' });
      else setState({ is: 'failed', why: error instanceof Error ? error.message : String(error) });
    }
  };
  return (
    <Sheet title={said.title} open onClose={close}>
      <p>{said.what}</p>
      <Form
        onSubmit={(event) => {
          event.preventDefault();
          void save();
        }}
      >
        <div className="row">
          <TextField
            className="field"
            value={width}
            inputMode="numeric"
            onChange={(text) => {
              setWidth(text);
              setWrong(false);
            }}
            isInvalid={wrong}
            validationBehavior="aria"
          >
            <Label>{said.width}</Label>
            <Input />
            {wrong && (
              <FieldError className="slip-wrong">
                {said.widthWrong(LEAST_WIDTH, GREATEST_WIDTH)}
              </FieldError>
            )}
          </TextField>
          <Toggle on={captioned} onChange={setCaptioned}>
            {said.captions}
          </Toggle>
          {/* Pending, not disabled: a disabled button gives up the focus, and Escape would reach nothing. */}
          <Do main type="submit" isPending={state.is === 'rendering'} isDisabled={!props.stage}>
            {said.save}
          </Do>
        </div>
      </Form>
      {state.is === 'rendering' && (
        <div className="row">
          <ProgressBar
            value={100 * state.share}
            aria-label={said.rendering(formatPercent(state.share))}
            className="still-progress"
          >
            <p>{said.rendering(formatPercent(Math.floor(100 * state.share) / 100))}</p>
            <div className="bar">
              <i style={{ width: `${100 * state.share}%` }} />
            </div>
          </ProgressBar>
          <Do onPress={() => work.current?.abort()}>{words.controls.cancel}</Do>
        </div>
      )}
      <p role="status">
        {state.is === 'saved' && said.saved(state.name)}
        {state.is === 'stopped' && said.stopped}
        {state.is === 'failed' && said.failed(state.why)}
      </p>
    </Sheet>
  );
}
