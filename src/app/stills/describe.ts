/** What a still's file says of its pictures. */

import type { PrintedCaption } from '../../handout/caption';
import type { Metadata, Shot } from '../../handout/metadata/types';
import { packSession } from '../../session/pack';
import { picturesOnly } from '../../session/picture-state';
import type { Session } from '../../session/types';
import type { Shown } from '../compare/shown';
import { stills as said } from '../words/stills.en';

const DIAGONAL_36_BY_24 = Math.hypot(0.036, 0.024);

/** The settings of one picture, as a camera would write them. */
export function shotOf({ resolved }: Shown): Required<Shot> {
  const { focal, fNumber, standpoint, camera } = resolved;
  const { width, height } = camera.sensor;
  return {
    focal,
    fNumber,
    distance: standpoint,
    equivalent: (focal * DIAGONAL_36_BY_24) / Math.hypot(width, height),
  };
}

/** Of several pictures only what all of them share: a file has one field for each. */
function shared(shots: readonly Required<Shot>[]): Shot {
  const [first] = shots;
  const same = Object.entries(first ?? {}).filter(([name, value]) =>
    shots.every((shot) => Math.abs(shot[name as keyof Shot] / value - 1) < 1e-6),
  );
  return Object.fromEntries(same);
}

/** "A: 0.40 m from the eyes, 35.0 mm lens." for each. */
const listed = (captions: readonly PrintedCaption[]): string =>
  captions
    .map(({ letter, title, details }) => said.listed(letter, [title, ...details.slice(0, 1)]))
    .join(' ');

/** @throws Error when the session is too much for a picture to carry. */
export function metadataOf(
  session: Session,
  pictures: readonly Shown[],
  captions: readonly PrintedCaption[],
  { whole, blurred }: { whole: boolean; blurred: boolean },
): Metadata {
  const packed = packSession(whole ? session : picturesOnly(session));
  if (packed === null) throw new Error(said.tooMuch);
  return {
    description: said.description(listed(captions), blurred),
    shot: shared(pictures.map(shotOf)),
    state: { holds: whole ? 'session' : 'pictures', packed },
  };
}
