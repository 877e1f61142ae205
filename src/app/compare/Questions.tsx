import { useState } from 'react';
import { distanceForGain } from '../../optics/perspective';
import { matchTheLook } from '../../readings/compare';
import { formatLength, formatPercent, formatRatio } from '../../readings/format';
import { landmarkRatio } from '../../readings/measure-face';
import { parseShare } from '../../readings/parse';
import { matchLook } from '../../session/actions';
import type { LandmarkName } from '../../sitter/types';
import { ChoiceValue } from '../controls/ChoiceValue';
import { TypedValue } from '../controls/TypedValue';
import { Do } from '../controls/words';
import { useWorkbench } from '../state/workbench';
import { words } from '../words';
import { landmarkWords } from '../words/landmarks.en';
import type { Shown, Subject } from './shown';

/** Gains that can be asked for: below, the distance would be beyond any room. */
const GAINS = { least: 0.005, most: 2 };
const LANDMARKS = landmarkWords.map(({ id, name, term }) => ({ id, name, note: term }));
const nameOf = (id: LandmarkName) => landmarkWords.find((each) => each.id === id)?.name ?? id;

/** Everybody's first column. */
const onePerPerson = (columns: readonly Subject[]): readonly Subject[] =>
  columns.filter(({ person }, i) => columns.findIndex((each) => each.person === person) === i);

/** The first two pictures of different people, with the standpoint that gives the second the first's look. */
function differentPeople(pictures: readonly Shown[]) {
  const [first, ...others] = pictures.map(({ subjects }) => subjects[0]);
  const own = others.find(({ person }) => person !== first?.person);
  if (!first || !own) return null;
  return { own, other: first, distance: matchTheLook(own.measures, first.measures) };
}

/** What the table does not hold: the distance for a wanted gain, and any part over any other. */
export default function Questions({
  pictures,
  columns,
}: {
  pictures: readonly Shown[];
  columns: readonly Subject[];
}) {
  const { units } = useWorkbench().session;
  const [gain, setGain] = useState(0.08);
  const [part, setPart] = useState<LandmarkName>('pronasale');
  const [other, setOther] = useState<LandmarkName>('gonion_left');
  const { act } = useWorkbench();
  const said = words.readings;
  const pair = differentPeople(pictures);
  const distances = onePerPerson(columns).flatMap(({ name, measures: { face } }) => {
    const found = distanceForGain(face.depth.nose, face.depth.ears, gain);
    return found.ok ? [said.gainAt(formatLength(found.value, units, 'distance'), name)] : [];
  });
  return (
    <div className="questions">
      <p>
        {said.gain({
          gain: (
            <TypedValue
              label={said.gainLabel}
              shown={formatPercent(gain)}
              initial={formatPercent(gain)}
              parse={parseShare}
              range={GAINS}
              show={(share) => formatPercent(share)}
              offers={[0.05, 0.08, 0.15].map((value) => ({ value, shown: formatPercent(value) }))}
              onCommit={setGain}
            />
          ),
          distance: distances.length > 0 ? distances.join(said.or) : null,
        })}
      </p>
      {pair && (
        <p>
          {said.sameLook({
            own: pair.own.letter,
            other: pair.other.letter,
            distance:
              pair.distance === null ? null : formatLength(pair.distance, units, 'distance'),
          })}{' '}
          {pair.distance !== null && (
            <Do
              onPress={() =>
                act(matchLook, { letter: pair.own.picture, other: pair.other.picture })
              }
            >
              {said.takeLook}
            </Do>
          )}
        </p>
      )}
      <p>
        {said.any({
          a: (
            <ChoiceValue
              label={said.landmark}
              shown={nameOf(part)}
              chosen={part}
              choices={LANDMARKS}
              onChoose={setPart}
            />
          ),
          b: (
            <ChoiceValue
              label={said.otherLandmark}
              shown={nameOf(other)}
              chosen={other}
              choices={LANDMARKS}
              onChoose={setOther}
            />
          ),
          ratios: columns.map(({ letter, camera, sitter }) => {
            const ratio = landmarkRatio({ camera, sitter }, part, other);
            return said.ratioIn(ratio === null ? null : formatRatio(ratio), letter);
          }),
        })}
      </p>
    </div>
  );
}
