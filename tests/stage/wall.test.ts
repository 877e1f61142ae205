import { describe, expect, it } from 'vitest';
import type { Camera } from '../../src/optics/types';
import { metres, radians } from '../../src/optics/units';
import type { Company } from '../../src/stage/company';
import { type Hanging, todo } from '../../src/stage/wall';

const camera = (distance: number): Camera => ({
  position: [0, 0, distance],
  tilt: radians(0),
  frustum: { left: -0.1, right: 0.1, bottom: -0.1, top: 0.1 },
  imageDistance: metres(0.05),
  sensor: { width: metres(0.024), height: metres(0.036) },
});
const room = {
  backdrop: 2,
  cameraWall: 3,
  behindCamera: 0.4,
  hall: { left: 3.6, right: 3.6, height: 3.5, depth: 10, behind: 0, sheet: null, corner: null },
};
const setting = { light: {}, room, look: 'photo', landmarks: [] } as const;
const company = (shades: string): Company => ({
  sitters: [],
  bounds: { min: [0, 0, 0], max: [0, 0, 0] },
  floor: -1.5,
  shades,
});
const [somebody, another] = [company('a'), company('b')];
const rect = { x: 0, y: 0, width: 100, height: 150 };
const hanging: Hanging = {
  pictures: [
    { letter: 'A', camera: camera(0.4), rect, company: somebody, second: null },
    {
      letter: 'B',
      camera: camera(2.4),
      rect: { ...rect, x: 120 },
      company: somebody,
      second: null,
    },
  ],
  setting,
  width: 400,
  height: 300,
  scale: 1,
};

describe('what is drawn again', () => {
  it('everything at first', () => {
    expect(todo(null, hanging)).toEqual({ clear: true, shadows: true, letters: ['A', 'B'] });
  });

  it('nothing when nothing changed, even if the objects are new', () => {
    const same = {
      ...hanging,
      pictures: hanging.pictures.map((p) => ({ ...p, camera: { ...p.camera } })),
    };
    expect(todo(hanging, same)).toEqual({ clear: false, shadows: false, letters: [] });
  });

  it('one picture, and no shadow, when one standpoint moves', () => {
    const [a, b] = hanging.pictures;
    if (!a || !b) throw new Error('two pictures hang here');
    const moved = { ...hanging, pictures: [a, { ...b, camera: camera(2.3) }] };
    expect(todo(hanging, moved)).toEqual({ clear: false, shadows: false, letters: ['B'] });
  });

  it('the picture whose sitters change, and what was drawn of shadows stays', () => {
    const [a, b] = hanging.pictures;
    if (!a || !b) throw new Error('two pictures hang here');
    const changed = { ...hanging, pictures: [{ ...a, company: another }, b] };
    expect(todo(hanging, changed)).toEqual({ clear: false, shadows: false, letters: ['A'] });
  });

  it.each(['light', 'room'] as const)('all pictures and all shadows when the %s changes', (key) => {
    const changed = { ...hanging, setting: { ...setting, [key]: { ...room } } };
    expect(todo(hanging, changed)).toEqual({ clear: false, shadows: true, letters: ['A', 'B'] });
  });

  it('all pictures, not the shadows, when the look changes', () => {
    const changed = { ...hanging, setting: { ...setting, look: 'clay' as const } };
    expect(todo(hanging, changed)).toEqual({ clear: false, shadows: false, letters: ['A', 'B'] });
  });

  it('all on a cleared wall when a rectangle, the buffer or the number of pictures changes', () => {
    const all = { clear: true, shadows: false, letters: ['A', 'B'] };
    expect(todo(hanging, { ...hanging, width: 500 })).toEqual(all);
    expect(todo({ ...hanging, pictures: hanging.pictures.slice(1) }, hanging)).toEqual(all);
    const shifted = hanging.pictures.map((p) => ({ ...p, rect: { ...p.rect, y: 1 } }));
    expect(todo(hanging, { ...hanging, pictures: shifted })).toEqual(all);
  });
});
