import fc from 'fast-check';
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { type Box, boxesOverlap, boxInside, grow } from '../../src/drawings/geometry';
import { FromAbove, FromSide, type PlanContent, PRINT_REM } from '../../src/drawings/plan';
import { layoutAbove } from '../../src/drawings/plan/above';
import { afterCarry, afterKey, type GripAxis } from '../../src/drawings/plan/grips';
import { A4_FREE, PRINT_SCALES, PX_PER_MM } from '../../src/drawings/plan/print';
import { pageScale, scaleBar, TEXT } from '../../src/drawings/plan/sheet';
import { layoutSide } from '../../src/drawings/plan/side';
import type { PlanSheet } from '../../src/drawings/plan/types';
import { PLAN_WORDS } from '../../src/drawings/plan/words';
import { estimateText } from '../../src/drawings/text-width';
import type { RoomAsked } from '../../src/plan/room';
import { runThrough } from '../../src/plan/run';
import { contentIn, FIGURE, LIGHTS, pictureAt, ROOM } from './plan-shapes';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const contents: fc.Arbitrary<PlanContent> = fc
  .record({
    axis: fc.constantFrom('along' as const, 'across' as const, 'diagonal' as const),
    units: fc.constantFrom('metric' as const, 'imperial' as const),
    length: between(3, 12),
    width: between(2.5, 9),
    aside: between(-0.5, 0.5),
    sitterBefore: between(0.4, 1.6),
    behindCamera: between(0, 1),
    places: fc.array(between(0.05, 1), { minLength: 1, maxLength: 4 }),
    frame: between(0.25, 2.2),
    lift: between(-0.1, 0.3),
    lit: fc.boolean(),
    chosen: fc.constantFrom(null, 'A' as const),
  })
  .map((asked) => {
    const { axis, length, width, aside, sitterBefore, behindCamera, places, frame, lift } = asked;
    const room: RoomAsked = {
      ...ROOM,
      axis,
      length,
      width,
      aside,
      sitterBefore,
      behindCamera,
      obstacles: ROOM.obstacles.slice(0, 1),
    };
    const { cameraWall } = runThrough(room);
    return contentIn(room, {
      units: asked.units,
      people: [{ ...FIGURE, profile: null }],
      chosen: asked.chosen,
      lights: asked.lit ? LIGHTS : [],
      pictures: places.map((share, i) => {
        const standpoint = Math.max(0.4, share * (cameraWall - behindCamera));
        const letter = (['A', 'B', 'C', 'D'] as const)[i] ?? 'A';
        const picture = pictureAt(letter, standpoint, frame, room, i % 2 ? lift : 0);
        return i === 0
          ? {
              ...picture,
              move: { min: 0.15, max: 3, reason: 'Farther, your back meets the wall.' },
            }
          : picture;
      }),
      focus: places.map((share) => ({ distance: 0.3 + share, letter: 'A' as const })),
    });
  });

const sheets: fc.Arbitrary<PlanSheet> = fc
  .record({ width: fc.integer({ min: 300, max: 1200 }), rem: fc.integer({ min: 14, max: 24 }) })
  .map((sheet) => ({ ...sheet, measure: estimateText }));

const DRAWINGS = { above: layoutAbove, side: layoutSide } as const;

function expectApart(boxes: readonly Box[]): void {
  for (const [i, a] of boxes.entries()) {
    for (const b of boxes.slice(i + 1)) expect(boxesOverlap(a, b, -0.01)).toBe(false);
  }
}

describe.each(['above', 'side'] as const)('from %s', (view) => {
  const every = (
    check: (
      layout: ReturnType<typeof layoutAbove> | ReturnType<typeof layoutSide>,
      content: PlanContent,
    ) => void,
  ) =>
    fc.assert(
      fc.property(contents, sheets, (content, sheet) =>
        check(DRAWINGS[view](content, sheet, PLAN_WORDS), content),
      ),
      { numRuns: 150 },
    );

  it('texts cover neither each other nor a tab, and stay in the room', () => {
    every(({ labels, tabs, ground }) => {
      const boxes = labels.map(({ box }) => box);
      expectApart(boxes);
      for (const box of boxes) {
        expect(boxInside(box, grow(ground.room, 0.01))).toBe(true);
        expect(tabs.some(({ tab }) => boxesOverlap(box, tab))).toBe(false);
      }
    });
  });

  it('tabs lie apart, with targets of 44 px', () => {
    every(({ tabs, grips }) => {
      expectApart(tabs.map(({ tab }) => tab));
      for (const { what, targets } of grips) {
        const [first] = targets;
        if (what.kind !== 'camera') continue;
        expect(first?.width).toBeGreaterThanOrEqual(44);
        expect(first?.height).toBeGreaterThanOrEqual(44);
      }
    });
  });

  it('says a reason in the drawing or under it', () => {
    every(({ labels, notes }) => {
      const ids = [...labels, ...notes].map(({ id }) => id);
      expect(ids.filter((id) => id.startsWith('reason-camera-A'))).toHaveLength(1);
    });
  });

  it('dimension lines are as long as what they measure', () => {
    every(({ dimensions, ground }, { room, eyeHeight }) => {
      const measured: Record<string, number> = {
        length: room.length,
        width: room.width,
        before: room.sitterBefore,
        ceiling: room.ceiling,
        'lens-A': eyeHeight,
      };
      for (const {
        id,
        line: [a, b],
      } of dimensions) {
        const metres = measured[id];
        if (metres === undefined) continue;
        expect(Math.hypot(a.x - b.x, a.y - b.y) / ground.pxPerMetre).toBeCloseTo(metres, 6);
      }
    });
  });

  it('in a room much longer than high, tabs stay on a narrow sheet and the bar leaves its place to the scale', () => {
    const room: RoomAsked = { ...ROOM, length: 24, width: 10, obstacles: [] };
    const content = contentIn(room, { pictures: [pictureAt('A', 6, 2, room)] });
    const sheet = { width: 326, rem: 16, measure: estimateText };
    const { tabs, ground } = DRAWINGS[view](content, sheet, PLAN_WORDS);
    const { width, height } = ground;
    for (const { tab } of tabs)
      expect(boxInside(tab, grow({ x: 0, y: 0, width, height }, 0.01))).toBe(true);
    const { parts, texts } = scaleBar(ground, false);
    const size = TEXT.note * ground.rem;
    const barEnd = (parts[2]?.x ?? 0) + estimateText(texts[2] ?? '', size) / 2;
    const scale = estimateText(PLAN_WORDS.prints(ground.prints), size);
    expect(barEnd).toBeLessThan(ground.room.x + ground.room.width - scale);
  });

  it('stands on the sheet', () => {
    every(({ ground }) => {
      const { room, width, height } = ground;
      expect(boxInside(room, { x: 0, y: 0, width, height })).toBe(true);
      expect(ground.foot).toBeLessThan(height);
    });
  });
});

describe('printed', () => {
  it('a metre is 1000 / n millimetres, and the sheet says so', () => {
    for (const scale of PRINT_SCALES) {
      const sheet = { width: 700, rem: PRINT_REM, printScale: scale, measure: estimateText };
      const { ground } = layoutAbove(contentIn(ROOM), sheet, PLAN_WORDS);
      expect(ground.room.width / PX_PER_MM).toBeCloseTo((ROOM.length * 1000) / scale, 9);
      const html = renderToStaticMarkup(
        <FromAbove content={contentIn(ROOM)} width={700} rem={PRINT_REM} printScale={scale} />,
      );
      expect(html).toContain(`1 : ${scale}`);
      const [, width, unit] = /<svg width="([\d.]+)(\w+)"/.exec(html) ?? [];
      expect(unit).toBe('mm');
      const [, box] = /viewBox="0 0 ([\d.]+) /.exec(html) ?? [];
      // Drawing units are CSS pixels: 96 to the inch of 25.4 mm.
      expect(Number(width) / Number(box)).toBeCloseTo(25.4 / 96, 9);
      expect(html).not.toContain('role="slider"');
    }
  });

  it('the scale that is offered is the largest that fits A4, in both drawings', () => {
    fc.assert(
      fc.property(contents, sheets, (content, sheet) => {
        const { prints } = layoutAbove(content, sheet, PLAN_WORDS).ground;
        if (prints === null) return;
        for (const layout of [layoutAbove, layoutSide]) {
          const { ground } = layout(
            content,
            { ...sheet, rem: PRINT_REM, printScale: prints },
            PLAN_WORDS,
          );
          expect(ground.width / PX_PER_MM).toBeLessThanOrEqual(A4_FREE.width);
          expect(ground.height / PX_PER_MM).toBeLessThanOrEqual(A4_FREE.height);
        }
      }),
      { numRuns: 150 },
    );
    // 5.20 m at 1 : 25 is 208 mm, wider than A4's 210 mm less its margins; at 1 : 40 it is 130 mm.
    const sheet = { width: 700, rem: 16, measure: estimateText };
    expect(layoutSide(contentIn(ROOM), sheet, PLAN_WORDS).ground.prints).toBe(40);
  });

  it.each([
    ['upright', { width: 174, height: 215 }, false],
    ['lying', { width: 261, height: 128 }, true],
  ] as const)('both drawings fit an %s page at the scale told for it', (_, space, beside) => {
    fc.assert(
      fc.property(contents, (content) => {
        const printed = pageScale(content, space);
        if (printed === null) return;
        const sheet = {
          width: 0,
          rem: PRINT_REM,
          printScale: printed.scale,
          measure: estimateText,
        };
        const grounds = [layoutAbove, layoutSide].map(
          (layout) => layout(content, sheet, PLAN_WORDS).ground,
        );
        const [widths, heights] = [grounds.map((g) => g.width), grounds.map((g) => g.height)];
        const sum = (lengths: number[]) => lengths.reduce((a, b) => a + b);
        const [width, height] = printed.beside
          ? [sum(widths), Math.max(...heights)]
          : [Math.max(...widths), sum(heights)];
        expect(width / PX_PER_MM).toBeLessThanOrEqual(space.width);
        expect(height / PX_PER_MM).toBeLessThanOrEqual(space.height);
      }),
      { numRuns: 150 },
    );
    // 5.20 m twice at 1 : 50 is 208 mm; below each other, 3.40 m and 2.60 m are 120 mm and their margins.
    expect(pageScale(contentIn(ROOM), space)).toEqual({ scale: 50, beside });
  });
});

describe('moving', () => {
  const axis = (value: number, x: number, y: number): GripAxis => ({
    name: 'n',
    value,
    move: { min: 0, max: 4 },
    way: { x, y },
    spoken: '',
  });
  const onFloor = { axes: [axis(1, 1, 0), axis(2, 0, -1)], pxPerMetre: 100 } as const;

  it('arrows go where they point, whichever number has the focus', () => {
    const press = (key: string, shiftKey = false) =>
      afterKey(onFloor, 0, { key, shiftKey }, 'metric');
    expect(press('ArrowRight')).toEqual([1.01, 2]);
    expect(press('ArrowLeft', true)).toEqual([0.9, 2]);
    expect(press('ArrowUp')).toEqual([1, 2.01]);
    expect(press('ArrowDown', true)).toEqual([1, 1.9]);
    expect(press('Home')).toEqual([0, 2]);
    expect(afterKey(onFloor, 1, { key: 'End', shiftKey: false }, 'metric')).toEqual([1, 4]);
    expect(press('Tab')).toBeNull();
  });

  it('on an axis up the sheet, up leads away from the sitter and right does too', () => {
    const up = { axes: [axis(1, 0, -1)] } as const;
    const press = (key: string) => afterKey(up, 0, { key, shiftKey: false }, 'metric');
    expect(press('ArrowUp')).toEqual([1.01]);
    expect(press('ArrowDown')).toEqual([0.99]);
    expect(press('ArrowRight')).toEqual([1.01]);
    const leftwards = { axes: [axis(1, -1, 0)] } as const;
    expect(afterKey(leftwards, 0, { key: 'ArrowLeft', shiftKey: false }, 'metric')).toEqual([1.01]);
  });

  it('the hand carries along each number’s own way, on the grid and inside the limits', () => {
    expect(afterCarry(onFloor, [1, 2], { x: 50.3, y: 25.2 }, 'metric')).toEqual([1.5, 1.75]);
    expect(afterCarry(onFloor, [1, 2], { x: -900, y: -900 }, 'metric')).toEqual([0, 4]);
    const slanting = { axes: [axis(1, 0.8, -0.6)], pxPerMetre: 100 } as const;
    expect(afterCarry(slanting, [1], { x: 80, y: -60 }, 'metric')).toEqual([2]);
    expect(afterCarry(slanting, [1], { x: 60, y: 80 }, 'metric')).toEqual([1]);
  });
});

describe('for those who listen', () => {
  const above = renderToStaticMarkup(
    <FromAbove
      content={contentIn(ROOM, { lights: LIGHTS })}
      width={700}
      rem={16}
      onMove={() => undefined}
    />,
  );
  const side = renderToStaticMarkup(
    <FromSide content={contentIn(ROOM)} width={700} rem={16} onMove={() => undefined} />,
  );

  it('everything that moves is a slider that says its value', () => {
    // Backdrop; three obstacles, two lights and the sitter by two numbers each; two cameras.
    expect(above.match(/role="slider"/g)).toHaveLength(1 + 2 * 3 + 2 * 2 + 2 + 2);
    expect(above).toContain('aria-label="Standpoint B"');
    expect(above).toContain('aria-valuetext="2.50 metres from the eyes"');
    expect(above).toContain(
      'aria-valuetext="0.75 metres from the end wall, 0.02 metres from the side wall"',
    );
    // Backdrop and its top, sitter, two cameras and their lenses.
    expect(side.match(/role="slider"/g)).toHaveLength(7);
    expect(side).toContain('aria-label="Lens height B"');
    expect(side).toContain('aria-valuetext="1.51 metres above the floor"');
  });

  it('without a way to move there is none', () => {
    const html = renderToStaticMarkup(<FromAbove content={contentIn(ROOM)} width={700} rem={16} />);
    expect(html).not.toContain('role="slider"');
  });
});

it('an empty room, a far limit without end and a standpoint behind the wall are drawn all the same', () => {
  const [picture] = contentIn(ROOM).pictures;
  if (!picture) throw new Error('a picture expected');
  for (const changes of [
    { pictures: [], people: [], focus: [], chosen: null, moves: {} },
    { pictures: [{ ...picture, sharp: [0.3, Number.POSITIVE_INFINITY] as const }] },
    { pictures: [pictureAt('A', 9, 0.77, ROOM)] },
  ]) {
    const content = contentIn(ROOM, changes);
    for (const Drawing of [FromAbove, FromSide]) {
      const html = renderToStaticMarkup(
        <Drawing content={content} width={328} rem={16} onMove={() => undefined} />,
      );
      expect(html).not.toMatch(/NaN|Infinity|undefined/);
    }
  }
});
