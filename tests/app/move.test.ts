/** What a clip's captions and a moving page tell at any place of the move. */
import { describe, expect, it } from 'vitest';
import { showPictures } from '../../src/app/compare/shown';
import { canMove, endsOf, moveCaption, shownAlong } from '../../src/app/takeaway/move/along';
import { formatLength, formatRatio } from '../../src/readings/format';
import { demoSession } from '../../src/session/demo';
import { type Pace, standpointAlong } from '../../src/session/play';
import { context, models, must } from '../session/fixtures';

const session = demoSession();
const move = (pace: Pace) => ({ session, models, cast: context.cast, pace });

describe('captions of the move', () => {
  it('are those of the picture hung at that very standpoint', () => {
    for (const pace of ['look', 'metres'] as const)
      for (const at of [0, 0.13, 0.5, 0.871, 1]) {
        const shown = shownAlong(move(pace), at);
        const standpoint = standpointAlong(0.4, 2.4, at, pace);
        expect(shown.resolved.standpoint).toBe(standpoint);
        // The same picture set up by hand: its own camera, its own readings.
        const [a, ...others] = session.pictures;
        const hung = { ...session, pictures: [{ ...must(a), standpoint }, ...others] };
        const own = must(showPictures(hung, models, context.cast, null)[0]);
        const caption = moveCaption(shown, session, true);
        expect(caption.letter).toBe('A–\u2060B');
        expect(caption.title).toBe(
          `${formatLength(standpoint, 'metric', 'distance')} from the eyes`,
        );
        expect(caption.details).toEqual([
          `${(1000 * own.resolved.focal).toFixed(1)} mm lens`,
          `nose to ear ${formatRatio(must(own.measures.face.noseToEar.mean))}`,
        ]);
      }
  });

  it('carry the letters of the ends', () => {
    const other = { ...session, play: { ...session.play, from: 'B' as const, to: 'A' as const } };
    const shown = shownAlong({ ...move('look'), session: other }, 0);
    expect(moveCaption(shown, other, false)).toMatchObject({
      letter: 'B',
      title: '2.40 m from the eyes',
    });
    expect(moveCaption(shown, other, true).letter).toBe('B–\u2060A');
    expect(endsOf(other)).toEqual(['2.40 m', '0.40 m']);
  });

  it('need both ends', () => {
    const alone = { ...session, pictures: session.pictures.slice(0, 1) };
    expect(canMove(session)).toBe(true);
    expect(canMove(alone)).toBe(false);
    expect(() => shownAlong({ ...move('look'), session: alone }, 0.5)).toThrow('A move needs two');
  });
});
