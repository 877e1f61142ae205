/** Cautions and the line on how a page was computed. Pure. */
import type { Models } from '../../../models/types';
import { formatLength } from '../../../readings/format';
import { bodyOf } from '../../../session/kit';
import { known } from '../../../session/known';
import { personOf } from '../../../session/person';
import { CLOSE } from '../../compare/StandpointValue';
import { isChildSitter } from '../../people/child';
import { page as said } from '../../words/page.en';
import type { PageSitting } from '../useSitting';

/** A camera so far above the eyes is raised, metres. Common practice, no source. */
const RAISED = 0.2;

export function cautionsOf({ session, pictures }: PageSitting, models: Models): readonly string[] {
  const told = pictures.flatMap(({ letter, picture, resolved, measures }) => {
    const child = picture.of.some((id) =>
      isChildSitter(models.sitters.get(personOf(session, id).model)),
    );
    const way = formatLength(measures.face.noseToLens, session.units, 'distance');
    return [
      ...(resolved.standpoint < CLOSE
        ? [(child ? said.closeToChild : said.closeTo)(letter, way)]
        : []),
      ...(picture.cameraHeight > RAISED ? [said.raised(letter)] : []),
    ];
  });
  return told.length > 0 ? [...told, said.rules] : [];
}

export function computedLine({ session, pictures }: PageSitting, models: Models): string {
  const { nose, ears } = pictures[0].measures.face.depth;
  const show = (metres: number) => formatLength(Math.abs(metres), session.units, 'depth');
  const format = known(models.formats, bodyOf(session).format).name;
  return `${said.computed({ format, nose: show(nose), ears: show(ears) })} ${said.caution}`;
}
