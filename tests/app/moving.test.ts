/** What a moving page tells at each standpoint, against the same picture hung by hand. */
import { describe, expect, it } from 'vitest';
import { showPictures } from '../../src/app/compare/shown';
import { framesOf, movingContent } from '../../src/app/takeaway/moving/content';
import { movingPage } from '../../src/handout/moving/page';
import { readings } from '../../src/readings/read';
import { demoSession } from '../../src/session/demo';
import { standpointAlong } from '../../src/session/play';
import { context, models, must } from '../session/fixtures';

const session = {
  ...demoSession(),
  title: 'Sitting of Morgan Example',
  notes: 'Call Morgan before ten.',
};
const move = { session, models, cast: context.cast, pace: 'look' } as const;
const STEPS = 7;
const shown = framesOf(move, STEPS);
const content = (view: 'one' | 'two') =>
  movingContent(
    move,
    { view, steps: STEPS, side: 300, title: 'A page' },
    shown,
    { size: { width: 200, height: 300 }, fonts: [] },
    ({ resolved }) => `data:image/webp;base64,${resolved.standpoint}`,
  );

describe('the content of a moving page', () => {
  it('has the readings of the picture hung at each standpoint, evenly in one over the distance', () => {
    const { frames, rows, start } = content('two');
    expect(frames).toHaveLength(STEPS);
    for (const [i, frame] of frames.entries()) {
      expect(frame.standpoint).toBe(standpointAlong(0.4, 2.4, i / (STEPS - 1), 'look'));
      const [a, ...others] = session.pictures;
      const hung = {
        ...session,
        pictures: [{ ...must(a), standpoint: frame.standpoint }, ...others],
      };
      const { measures } = must(showPictures(hung, models, context.cast, null)[0]);
      const own = readings(measures, { units: 'metric', pronoun: 'her' });
      expect(frame.cells).toEqual(
        rows.map((name) => must(own.find((reading) => reading.name === name)).shown),
      );
      expect(frame.image).toContain(String(frame.standpoint));
    }
    expect(start?.cells).toEqual(frames[0].cells);
  });

  it('tells the moving one against the start, or by itself where it is alone', () => {
    expect(content('two').frames.at(-1)?.says[0]).toMatch(/ in A and .* in A–\u2060B/);
    expect(content('one').frames.at(-1)?.says[0]).not.toContain(' in A');
    expect(content('one').start).toBeNull();
  });

  it('holds no title, notes or kit of the session', () => {
    const page = movingPage(content('two'), 'nonce');
    for (const word of ['Morgan', ...session.kits.map(({ name }) => name)])
      expect(page).not.toContain(word);
  });
});
