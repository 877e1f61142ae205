import { type ReactNode, useState } from 'react';
import { Form } from 'react-aria-components';
import { FORMATS } from '../../handout/encode/types';
import type { Session } from '../../session/types';
import { APERTURE_SAMPLES } from '../../stage';
import { ChoiceValue } from '../controls/ChoiceValue';
import { Sheet } from '../controls/Sheet';
import { Do, Toggle } from '../controls/words';
import { offerFile } from '../state/offerFile';
import { useWorkbench } from '../state/workbench';
import { useWork } from '../takeaway/useWork';
import { WorkBar } from '../takeaway/WorkBar';
import { stills as said } from '../words/stills.en';
import { makeStill, type Sit } from './makeStill';
import {
  type Options,
  QUALITIES,
  SAMPLE_CHOICES,
  USUAL_OPTIONS,
  type What,
  widthRange,
} from './options';
import { Strip } from './Strip';
import { WholeNumber } from './WholeNumber';

type Change = (change: Partial<Options>) => void;

/** What of a comparison can be saved, the usual first. */
const whatsOf = ({ pictures }: Session): What[] => [
  ...(pictures.length > 1 ? (['all'] as const) : []),
  ...pictures.map(({ letter }) => letter),
  'strip',
];

/** What is saved, as which kind of file, how finely. */
function Sentence(props: { session: Session; options: Options; onChange: Change }) {
  const { session, options, onChange } = props;
  const nameOf = (what: What): string =>
    what === 'all' ? said.all : what === 'strip' ? said.strip : said.alone(what);
  return (
    <p>
      {said.sentence({
        what: (
          <ChoiceValue
            label={said.whatLabel}
            shown={nameOf(options.what)}
            chosen={options.what}
            choices={whatsOf(session).map((id) => ({
              id,
              name: nameOf(id),
              ...(id === 'strip' ? { note: said.stripNote } : {}),
            }))}
            onChoose={(what) => onChange({ what })}
          />
        ),
        format: (
          <ChoiceValue
            label={said.formatLabel}
            shown={said.formats[options.format]}
            chosen={options.format}
            choices={FORMATS.map((id) => ({
              id,
              name: said.formats[id],
              note: said.formatNotes[id],
            }))}
            onChoose={(format) => onChange({ format })}
          />
        ),
        samples: (
          <ChoiceValue
            label={said.samplesLabel}
            shown={said.views(options.samples)}
            chosen={String(options.samples)}
            choices={SAMPLE_CHOICES.map((count) => ({
              id: String(count),
              name: said.views(count),
              ...(count === USUAL_OPTIONS.samples ? { note: said.viewsNote } : {}),
            }))}
            onChoose={(count) => onChange({ samples: Number(count) })}
          />
        ),
      })}
    </p>
  );
}

/** What stands below the pictures, how they are drawn, and what the file carries. */
function Toggles({ options, onChange }: { options: Options; onChange: Change }) {
  const { below } = options;
  return (
    <>
      <div className="row">
        {(['captions', 'letters', 'scale'] as const).map((part) => (
          <Toggle
            key={part}
            on={below[part]}
            onChange={(on) => onChange({ below: { ...below, [part]: on } })}
          >
            {said[part]}
          </Toggle>
        ))}
      </div>
      <div className="row">
        <Toggle
          on={options.blurred}
          onChange={(blurred) =>
            onChange({ blurred, samples: blurred ? APERTURE_SAMPLES : USUAL_OPTIONS.samples })
          }
        >
          {said.blurred}
        </Toggle>
        <Toggle on={options.whole} onChange={(whole) => onChange({ whole })}>
          {said.whole}
        </Toggle>
      </div>
      <p className="slip-note">{said.carries(options.whole)}</p>
    </>
  );
}

/** Why a typed size cannot be made, or null. */
function wrongWith(
  { width, quality, format }: Options,
  range: ReturnType<typeof widthRange>,
): { width: string | null; quality: string | null } {
  const isWithin = (value: number, { least, most }: { least: number; most: number }) =>
    Number.isInteger(value) && value >= least && value <= most;
  const widthFits = isWithin(width, range);
  const isTooLarge = widthFits && format === 'webp' && !range.fitsWebp(width);
  return {
    width: isTooLarge
      ? said.webpTooLarge
      : widthFits
        ? null
        : said.widthWrong(range.least, range.most),
    quality: format === 'png' || isWithin(quality, QUALITIES) ? null : said.qualityWrong,
  };
}

/** Asks what is saved and how, renders it and offers it as a file. */
export default function StillSheet(props: {
  session: Session;
  /** What is saved unless told otherwise. */
  what?: What;
  /** Null until there is a stage to render on. */
  sit: Sit | null;
  onClose: () => void;
  /** Choices that stand above the others. */
  children?: ReactNode;
}) {
  const { models } = useWorkbench();
  const { session, sit } = props;
  const [asked, setAsked] = useState<Options>({
    ...USUAL_OPTIONS,
    what: props.what ?? USUAL_OPTIONS.what,
  });
  // Another comparison may lack the picture that was asked for.
  const [usual = asked.what, ...others] = whatsOf(session);
  const options = { ...asked, what: others.includes(asked.what) ? asked.what : usual };
  const [sent, setSent] = useState(false);
  const work = useWork<{ name: string; bytes: number }>();
  const change: Change = (part) => setAsked((all) => ({ ...all, ...part }));
  const wrong = wrongWith(options, widthRange(session, models, options));
  const save = () => {
    setSent(true);
    if (!sit || wrong.width !== null || wrong.quality !== null) return;
    work.start(async (signal, onProgress) => {
      const { blob, name } = await makeStill({ session, models, options, sit, signal, onProgress });
      offerFile(blob, name);
      return { name, bytes: blob.size };
    });
  };
  return (
    <Sheet title={said.title} open onClose={props.onClose}>
      {props.children}
      <Sentence session={session} options={options} onChange={change} />
      {options.what === 'strip' && <Strip session={session} />}
      <Toggles options={options} onChange={change} />
      <Form
        onSubmit={(event) => {
          event.preventDefault();
          save();
        }}
      >
        <div className="row">
          <WholeNumber
            label={said.width}
            value={options.width}
            onChange={(width) => change({ width })}
            wrong={sent ? wrong.width : null}
          />
          {options.format !== 'png' && (
            <WholeNumber
              label={said.quality}
              value={options.quality}
              onChange={(quality) => change({ quality })}
              wrong={sent ? wrong.quality : null}
            />
          )}
          {/* Pending, not disabled: a disabled button gives up the focus, and Escape would reach nothing. */}
          <Do main type="submit" isPending={work.state.is === 'working'} isDisabled={!sit}>
            {said.save(options.format)}
          </Do>
        </div>
      </Form>
      <WorkBar
        work={work}
        done={({ name, bytes }) => said.saved(name, bytes)}
        failed={said.failed}
      />
    </Sheet>
  );
}
