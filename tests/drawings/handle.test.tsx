import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { Rail } from '../../src/drawings';
import { beginsTyping, distanceAfterKey, snap } from '../../src/drawings/steps';
import { HEADSHOT } from './shapes';

const LIMITS = { min: 0.2, max: 3.05 };
const move = (key: string, shiftKey = false, units: 'metric' | 'imperial' = 'metric') =>
  distanceAfterKey({ key, shiftKey }, 0.4, units, LIMITS);

describe('keys', () => {
  it.each([
    ['ArrowRight', false, 0.41],
    ['ArrowUp', false, 0.41],
    ['ArrowLeft', false, 0.39],
    ['ArrowDown', true, 0.3],
    ['ArrowRight', true, 0.5],
    ['PageUp', false, 0.5],
    ['PageDown', false, 0.3],
    ['Home', false, 0.2],
    ['End', false, 3.05],
  ])('%s (shift %s) leads from 0.40 m to %s m', (key, shift, expected) => {
    expect(move(key, shift)).toBe(expected);
  });

  it('step half an inch and three inches in feet and inches', () => {
    // 0.40 m is 15.748 in and shown as 15.5 in: steps go from what is shown, along half inches.
    expect((move('ArrowRight', false, 'imperial') ?? 0) / 0.0254).toBeCloseTo(16, 3);
    expect((move('ArrowRight', true, 'imperial') ?? 0) / 0.0254).toBeCloseTo(18.5, 3);
  });

  it('stop at the limits and leave other keys alone', () => {
    expect(distanceAfterKey({ key: 'PageDown', shiftKey: false }, 0.25, 'metric', LIMITS)).toBe(
      0.2,
    );
    expect(move('a')).toBeNull();
    expect(move('Tab')).toBeNull();
  });

  it('digits, a decimal mark and Enter begin a typed distance', () => {
    expect(['2', '.', ',', 'Enter'].every(beginsTyping)).toBe(true);
    expect(['a', ' ', 'Escape', 'F2'].some(beginsTyping)).toBe(false);
  });
});

it('a dragged distance lies on the grid that is shown, a limit may lie off it', () => {
  expect(snap(0.4049, 'metric', LIMITS)).toBe(0.4);
  expect(snap(3.049, 'metric', { min: 0.2, max: 3.047 })).toBe(3.047);
});

describe('for those who listen', () => {
  const html = renderToStaticMarkup(
    <Rail {...HEADSHOT} width={1340} rem={16} onMove={() => undefined} />,
  );

  it('each handle is a slider with its value in words', () => {
    expect(html.match(/role="slider"/g)).toHaveLength(2);
    expect(html).toContain('aria-valuetext="0.40 metres from the eyes, intimate distance"');
    expect(html).toContain('aria-valuetext="2.40 metres from the eyes, social distance"');
    expect(html).toContain('aria-valuemin="0.2" aria-valuemax="3.05" aria-valuenow="0.4"');
  });

  it('says the bands of personal distance', () => {
    expect(html).toContain('intimate, to 0.46 m; personal, to 1.22 m; social, to 3.66 m');
  });

  it('a limit is part of the value, and feet are spoken', () => {
    const pictures = HEADSHOT.pictures.map((picture) => ({
      ...picture,
      standpoint: 3.05,
      reason: 'Farther, your back meets the wall.',
    }));
    const imperial = renderToStaticMarkup(
      <Rail
        {...HEADSHOT}
        pictures={pictures}
        units="imperial"
        width={1340}
        rem={16}
        onMove={() => undefined}
      />,
    );
    expect(imperial).toContain(
      'aria-valuetext="10 feet from the eyes, social distance. Farther, your back meets the wall."',
    );
  });
});
