import type { ReactNode } from 'react';
import type { FrameSize } from '../../../handout/clip/layout';
import { WAYS } from '../../../handout/clip/plan';
import { formatNumber } from '../../../readings/format';
import { LIMITS } from '../../../session/limits';
import type { Pace } from '../../../session/play';
import { ChoiceValue } from '../../controls/ChoiceValue';
import { TypedValue } from '../../controls/TypedValue';
import { Toggle } from '../../controls/words';
import { clip as said } from '../../words/clip.en';
import { ViewValue } from '../move/ViewValue';
import type { ClipChoice } from './makeClip';

export const SIZES: readonly FrameSize[] = [
  { width: 640, height: 360 },
  { width: 1920, height: 1080 },
  { width: 3840, height: 2160 },
  { width: 1080, height: 1920 },
];
const PACES: readonly Pace[] = ['look', 'metres'];
/** Seconds. */
const RESTS = [0, 0.5, 1, 2];

const sizeId = ({ width, height }: FrameSize): string => `${width} ${height}`;
const shownNumber = (value: number): string => formatNumber(value, Number.isInteger(value) ? 0 : 1);

function parseSeconds(text: string) {
  const value = Number(text.replace(',', '.').replace(/s$/, '').trim());
  return text.trim() !== '' && Number.isFinite(value)
    ? ({ ok: true, value } as const)
    : ({ ok: false, why: said.secondsWrong } as const);
}

/** What the clip is, as a sentence in which each value is changed. */
export function ClipSentence(props: {
  about: ReactNode;
  choice: ClipChoice;
  onChange: (changes: Partial<ClipChoice>) => void;
}) {
  const { choice, onChange } = props;
  const { timing, size } = choice;
  return (
    <p className="setup">
      {said.what({
        about: props.about,
        view: <ViewValue chosen={choice.view} onChoose={(view) => onChange({ view })} />,
        size: (
          <ChoiceValue
            label={said.size}
            shown={said.shownSize(size.width, size.height)}
            chosen={sizeId(size)}
            choices={SIZES.map((each, i) => ({
              id: sizeId(each),
              name: said.shownSize(each.width, each.height),
              note: said.sizeNotes[i],
            }))}
            onChoose={(id) => {
              const chosen = SIZES.find((each) => sizeId(each) === id);
              if (chosen) onChange({ size: chosen });
            }}
          />
        ),
        seconds: (
          <TypedValue
            label={said.seconds}
            shown={said.shownSeconds(shownNumber(timing.seconds))}
            initial={String(timing.seconds)}
            parse={parseSeconds}
            range={LIMITS.playSeconds}
            show={(value) => said.shownSeconds(shownNumber(value))}
            onCommit={(seconds) => onChange({ timing: { ...timing, seconds } })}
          />
        ),
        pace: (
          <ChoiceValue
            label={said.pace}
            shown={said.paces[choice.pace][0]}
            chosen={choice.pace}
            choices={PACES.map((id) => ({
              id,
              name: said.paces[id][0],
              note: said.paces[id][1],
            }))}
            onChoose={(pace) => onChange({ pace })}
          />
        ),
        way: (
          <ChoiceValue
            label={said.way}
            shown={said.ways[timing.way][0]}
            chosen={timing.way}
            choices={WAYS.map((id) => ({ id, name: said.ways[id][0], note: said.ways[id][1] }))}
            onChoose={(way) => onChange({ timing: { ...timing, way } })}
          />
        ),
        rest: (
          <ChoiceValue
            label={said.rest}
            shown={said.shownRest(shownNumber(timing.rest))}
            chosen={String(timing.rest)}
            choices={RESTS.map((rest) => ({
              id: String(rest),
              name: said.shownRest(shownNumber(rest)),
            }))}
            onChoose={(rest) => onChange({ timing: { ...timing, rest: Number(rest) } })}
          />
        ),
        captions: (
          <Toggle on={choice.captioned} onChange={(captioned) => onChange({ captioned })}>
            {said.withCaptions}
          </Toggle>
        ),
      })}
    </p>
  );
}
