import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Box, boxesOverlap, boxInside } from '../../src/drawings/geometry';
import { chooseTexts } from '../../src/drawings/labels';
import { TARGET, TYPE } from '../../src/drawings/rail/ground';
import { layoutRail, type RailLayout } from '../../src/drawings/rail/layout';
import type { RailContent, RailSheet } from '../../src/drawings/rail/types';
import { estimateText } from '../../src/drawings/text-width';
import { HEADSHOT, SHEET } from './shapes';

const LETTERS = ['A', 'B', 'C', 'D'] as const;

const contents: fc.Arbitrary<RailContent> = fc
  .record({
    units: fc.constantFrom('metric' as const, 'imperial' as const),
    scale: fc.constantFrom('even' as const, 'stretched' as const),
    backdrop: fc.double({ min: 0.3, max: 3, noNaN: true }),
    cameraWall: fc.double({ min: 2, max: 9, noNaN: true }),
    shares: fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 4 }),
    height: fc.double({ min: 0.22, max: 2.1, noNaN: true }),
    lift: fc.double({ min: -0.15, max: 0.15, noNaN: true }),
    focus: fc.array(fc.double({ min: 0.1, max: 2, noNaN: true }), { maxLength: 4 }),
  })
  .map(({ units, scale, backdrop, cameraWall, shares, height, lift, focus }) => {
    const [min, max] = [0.2, cameraWall - 0.75];
    return {
      units,
      scale,
      figure: HEADSHOT.figure,
      room: { backdrop, cameraWall, behindCamera: 0.6 },
      pictures: shares.map((share, i) => ({
        letter: LETTERS[i] ?? 'A',
        standpoint: min + share * (max - min),
        cameraHeight: i % 2 ? lift : 0,
        frame: { top: 0.38 * height, bottom: -0.62 * height },
        min,
        max,
        reason: share > 0.8 ? 'Farther, your back meets the wall.' : undefined,
      })),
      focus: focus.map((distance, i) => ({ distance, letter: LETTERS[i] })),
    };
  });

const sheets: fc.Arbitrary<RailSheet> = fc
  .record({ width: fc.integer({ min: 328, max: 2560 }), rem: fc.integer({ min: 14, max: 24 }) })
  .map((sheet) => ({ ...sheet, measure: estimateText }));

const everyRail = (check: (layout: RailLayout, content: RailContent, sheet: RailSheet) => void) =>
  fc.assert(
    fc.property(contents, sheets, (content, sheet) =>
      check(layoutRail(content, sheet), content, sheet),
    ),
    { numRuns: 300 },
  );

/** Boxes of a row of texts about their middles. */
const rowBoxes = (texts: readonly { at: number; text: string }[], px: number): Box[] =>
  texts.map(({ at, text }) => {
    const width = estimateText(text, px);
    return { x: at - width / 2, y: 0, width, height: px };
  });

function expectApart(boxes: readonly Box[]): void {
  for (const [i, a] of boxes.entries()) {
    for (const b of boxes.slice(i + 1)) expect(boxesOverlap(a, b, -0.01)).toBe(false);
  }
}

describe('texts never collide', () => {
  it('labels, tabs and values', () => {
    everyRail(({ labels, handles }) => {
      expectApart([
        ...labels.map(({ box }) => box),
        ...handles.map(({ tab }) => tab),
        ...handles.map(({ value }) => value.box),
      ]);
    });
  });

  it('numbers and zones, each in its row', () => {
    everyRail(({ numbers, zones, ground }) => {
      expectApart(
        rowBoxes(
          numbers.map(({ x, text }) => ({ at: x, text })),
          TYPE.tick * ground.rem,
        ),
      );
      expectApart(
        rowBoxes(
          zones.flatMap(({ text }) => (text ? [text] : [])),
          TYPE.note * ground.rem,
        ),
      );
    });
  });

  it('every reason is said, in the drawing or under it', () => {
    everyRail(({ labels, reasons }, { pictures }) => {
      const asked = pictures.filter(({ reason }) => reason).length;
      const drawn = labels.filter(({ id }) => id.startsWith('reason')).length;
      expect(drawn + reasons.length).toBe(asked);
    });
  });
});

describe('handles', () => {
  it('offer targets of at least 44 px that do not cover each other', () => {
    everyRail(({ handles, ground }) => {
      const tabs = handles.flatMap(({ targets }) => targets.slice(0, 1));
      for (const { width, height } of tabs) {
        expect(width).toBeGreaterThanOrEqual(TARGET);
        expect(height).toBeGreaterThanOrEqual(TARGET);
      }
      expectApart(tabs);
      expectApart(handles.flatMap(({ targets }) => targets.slice(1)));
      for (const { tab } of handles) {
        expect(boxInside(tab, { x: 0, y: 0, width: ground.width, height: ground.height })).toBe(
          true,
        );
      }
    });
  });

  it('stand exactly over their distance', () => {
    everyRail(({ handles, ground }) => {
      for (const { x, picture } of handles) {
        expect(ground.scale.toDistance(x)).toBeCloseTo(picture.standpoint, 9);
      }
    });
  });
});

describe('to scale', () => {
  it('the even scale has one scale for lengths and heights', () => {
    everyRail(({ ground }) => {
      if (ground.scale.kind === 'stretched') return;
      const origin = ground.place({ x: 0, y: 0 });
      const corner = ground.place({ x: 0.3, y: 0.3 });
      expect(corner.x - origin.x).toBeCloseTo(origin.y - corner.y, 6);
    });
  });

  it('sight lines pass through the frame bracket and stay in the room, on both scales', () => {
    for (const scale of ['even', 'stretched'] as const) {
      const { sight, frames, ground } = layoutRail({ ...HEADSHOT, scale }, SHEET);
      expect(frames).toHaveLength(1);
      const [top, bottom] = frames[0]?.points ?? [];
      for (const [i, { points }] of sight.entries()) {
        const edge = i % 2 === 0 ? top : bottom;
        const after = points.findIndex(({ x }) => x <= (edge?.x ?? 0));
        const [a, b] = [points[after - 1], points[after]];
        if (!a || !b || !edge) throw new Error('a sight line does not reach the eyes');
        const share = (a.x - edge.x) / (a.x - b.x);
        // A bent line is drawn in short straight pieces: within a quarter of a pixel.
        expect(Math.abs(a.y + share * (b.y - a.y) - edge.y)).toBeLessThan(0.25);
        for (const { x, y } of points) {
          expect(x).toBeGreaterThanOrEqual(ground.band.x - 1e-6);
          expect(y).toBeGreaterThanOrEqual(ground.band.y - 1e-6);
          expect(y).toBeLessThanOrEqual(ground.band.y + ground.band.height + 1e-6);
        }
      }
    }
  });

  it('the height stays when the scale is changed', () => {
    everyRail(({ ground }, content, sheet) => {
      for (const scale of ['even', 'stretched'] as const) {
        expect(layoutRail({ ...content, scale }, sheet).ground.height).toBeCloseTo(
          ground.height,
          6,
        );
      }
    });
  });

  it('the frame and the figure fit the drawing', () => {
    everyRail(({ ground, frames }) => {
      for (const { y } of frames.flatMap(({ points }) => points)) {
        expect(y).toBeGreaterThanOrEqual(ground.band.y);
        expect(y).toBeLessThanOrEqual(ground.band.y + ground.band.height);
      }
    });
  });
});

it('frames that differ get a bracket each', () => {
  const [a, b] = HEADSHOT.pictures;
  if (!a || !b) throw new Error('two pictures expected');
  const wide = { ...b, frame: { top: 0.3, bottom: -0.4 } };
  const { frames } = layoutRail({ ...HEADSHOT, pictures: [a, wide] }, SHEET);
  expect(frames.map(({ letter }) => letter)).toEqual(['A', 'B']);
});

it('nearest focuses at one place share a mark', () => {
  const focus = LETTERS.map((letter) => ({ letter, distance: letter === 'D' ? 0.92 : 0.35 }));
  const found = layoutRail({ ...HEADSHOT, focus }, SHEET);
  expect(found.focus.map(({ letters }) => letters)).toEqual([['A', 'B', 'C'], ['D']]);
  expect(found.labels.map(({ lines }) => lines.join(' '))).toContain(
    'A, B and C focus from 0.35 m',
  );
});

it('a row of texts prefers long texts and keeps all short ones', () => {
  const wishes = [
    { from: 0, to: 120, texts: ['intimate, to 0.46 m', 'intimate'] },
    { from: 120, to: 150, texts: ['personal, to 1.22 m', 'personal'] },
  ];
  const row = { widthOf: (text: string) => 6 * text.length, gap: 8, from: 0, to: 400 };
  expect(chooseTexts(wishes, row).map((text) => text?.text)).toEqual(['intimate', 'personal']);
});
