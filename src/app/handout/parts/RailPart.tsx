import { frameAtEyePlane, RailStill } from '../../../drawings';
import { leadOf } from '../../../session/cast';
import { runOf } from '../../../session/kit';
import { focusMarks } from '../../compare/focusMarks';
import { useProfile } from '../../state/useProfile';
import { useSheet } from '../../state/useSheet';
import { page as said } from '../../words/page.en';
import type { PageSitting } from '../useSitting';

/** Root font sizes across the drawing: its texts are then as large on paper as the page's own. */
const ACROSS = 52;
const BAND = 5;

export function RailPart({ sitting }: { sitting: PageSitting }) {
  const { session, pictures, cast } = sitting;
  const room = runOf(session.room);
  const figure = useProfile(leadOf(cast, pictures[0].picture));
  const { ref, rem } = useSheet();
  return (
    <div ref={ref} className="page-rail">
      <RailStill
        label={said.rail}
        units={session.units}
        scale="even"
        figure={figure}
        room={room}
        pictures={pictures.map(({ letter, picture, resolved }) => ({
          letter,
          standpoint: resolved.standpoint,
          cameraHeight: picture.cameraHeight,
          frame: frameAtEyePlane(resolved.camera),
          min: resolved.standpoint,
          max: resolved.standpoint,
        }))}
        focus={focusMarks(pictures)}
        width={ACROSS * rem}
        rem={rem}
        maxBand={BAND * rem}
      />
    </div>
  );
}
