import { useState } from 'react';
import { formatFNumber, formatLength, formatNumber } from '../../readings/format';
import { parseFNumber, parseLength } from '../../readings/parse';
import { addOwnLens, setOwnLens } from '../../session/actions/plan-page';
import { LIMITS } from '../../session/limits';
import type { OwnLens } from '../../session/types';
import { type Figure, Figures, type FigureValues } from '../controls/Figures';
import { TextValue } from '../controls/TextValue';
import { useWorkbench } from '../state/workbench';
import { kit as said } from '../words/kit.en';

type Name =
  | 'shortest'
  | 'longest'
  | 'widest'
  | 'widestLong'
  | 'smallest'
  | 'nearest'
  | 'magnification'
  | 'length'
  | 'pupil';

export const parseMillimetres = (text: string) => parseLength(text, { unit: 'mm' });
export const showMillimetres = (metres: number) => `${formatNumber(metres * 1000, 1)} mm`;

/** A generic portrait lens to start from. */
const START = {
  focal: [0.085, 0.085],
  widest: [1.8, 1.8],
  smallest: 16,
  nearestFocus: [0.8, 0.8],
  length: 0.12,
} as const;

function figuresOf(
  lens: Omit<OwnLens, 'id' | 'name'>,
  units: 'metric' | 'imperial',
): Figure<Name>[] {
  const long = (metres: number) => formatLength(metres, units, 'distance');
  const labels = said.figures;
  const focal = { parse: parseMillimetres, range: LIMITS.focal, show: showMillimetres };
  const aperture = {
    parse: parseFNumber,
    range: LIMITS.fNumber,
    show: (n: number) => formatFNumber(n),
  };
  const length = { parse: (text: string) => parseLength(text), show: long };
  return [
    { name: 'shortest', label: labels.shortest, initial: showMillimetres(lens.focal[0]), ...focal },
    { name: 'longest', label: labels.longest, initial: showMillimetres(lens.focal[1]), ...focal },
    { name: 'widest', label: labels.widest, initial: formatFNumber(lens.widest[0]), ...aperture },
    {
      name: 'widestLong',
      label: labels.widestLong,
      initial: formatFNumber(lens.widest[1]),
      ...aperture,
    },
    {
      name: 'smallest',
      label: labels.smallest,
      initial: formatFNumber(lens.smallest),
      ...aperture,
    },
    {
      name: 'nearest',
      label: labels.nearest,
      initial: long(lens.nearestFocus[1]),
      range: LIMITS.nearestFocus,
      ...length,
    },
    {
      name: 'length',
      label: labels.length,
      initial: long(lens.length),
      range: LIMITS.lensLength,
      ...length,
    },
    {
      name: 'magnification',
      label: labels.magnification,
      note: said.notes.magnification,
      initial:
        lens.largestMagnification === undefined ? '' : formatNumber(lens.largestMagnification, 2),
      parse: (text) => {
        const value = Number(text.trim().replace(',', '.'));
        return Number.isFinite(value)
          ? { ok: true, value }
          : { ok: false, why: said.faults['not-a-number'] };
      },
      range: LIMITS.largestMagnification,
      show: (value) => formatNumber(value, 2),
      optional: true,
    },
    {
      name: 'pupil',
      label: labels.pupil,
      note: said.notes.pupil,
      initial: lens.entrancePupil === undefined ? '' : long(lens.entrancePupil),
      range: LIMITS.entrancePupil,
      optional: true,
      ...length,
    },
  ];
}

function lensOf(values: FigureValues<Name>): Omit<OwnLens, 'id' | 'name'> | string {
  const { shortest = 0, longest = 0, widest = 0, widestLong = 0, smallest = 0 } = values;
  if (longest < shortest) return said.longestFirst;
  if (smallest < Math.max(widest, widestLong)) return said.wideFirst;
  const { nearest = 0, length = 0, magnification, pupil } = values;
  return {
    focal: [shortest, longest],
    widest: [widest, widestLong],
    smallest,
    nearestFocus: [nearest, nearest],
    length,
    ...(magnification === undefined ? {} : { largestMagnification: magnification }),
    ...(pupil === undefined ? {} : { entrancePupil: pupil }),
  };
}

/** A lens typed by its figures, new or changed. */
export function OwnLensForm(props: { lens: OwnLens | null; onDone: () => void }) {
  const { session, act } = useWorkbench();
  const { lens } = props;
  const [name, setName] = useState(lens?.name ?? said.ownName);
  return (
    <Figures
      figures={figuresOf(lens ?? START, session.units)}
      send={lens ? said.save : said.take}
      before={
        <p>
          {said.figures.name}:{' '}
          <TextValue label={said.figures.name} text={name} onCommit={setName} />
        </p>
      }
      onSend={(values) => {
        const figures = lensOf(values);
        if (typeof figures === 'string') return figures;
        if (lens) {
          act(setOwnLens, {
            largestMagnification: undefined,
            entrancePupil: undefined,
            ...figures,
            name,
            lens: lens.id,
          });
        } else act(addOwnLens, { ...figures, name });
        props.onDone();
        return null;
      }}
    >
      {() => <p className="slip-note">{said.thin}</p>}
    </Figures>
  );
}
