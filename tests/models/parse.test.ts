import { describe, expect, it } from 'vitest';
import { models as bundled, sculptureUrls } from '../../src/models/browser';
import { loadModels, readModelFiles } from '../../src/models/node';
import { ModelsError, parseModels } from '../../src/models/parse';

const files = readModelFiles();

/** The files with one of them replaced by a changed copy. */
function withChange(path: string, change: (file: Record<string, unknown>) => void) {
  const copy = structuredClone(files[path]) as Record<string, unknown>;
  change(copy);
  return { ...files, [path]: copy };
}

function faultsOf(broken: Record<string, unknown>): readonly string[] {
  try {
    parseModels(broken);
  } catch (error) {
    if (error instanceof ModelsError) return error.faults;
    throw error;
  }
  return [];
}

describe('the files of models/', () => {
  const models = loadModels();

  it('are read alike from disk and from the bundle', () => {
    expect(bundled).toEqual(models);
  });

  it('gives the address of a sculpture by its file name', () => {
    for (const name of Object.keys(sculptureUrls)) expect(name).not.toContain('/');
  });

  it('hold the sensor sizes photographers know', () => {
    const sides = (id: string) => {
      const format = models.formats.get(id);
      return format && [format.longSide * 1000, format.shortSide * 1000];
    };
    // Claff W. 2006 gives the angles for 36 x 24 mm; the others: typical data sheets, from memory.
    expect(sides('full-frame')).toEqual([36, 24]);
    expect(sides('aps-c-23-6')).toEqual([23.6, 15.7]);
    expect(sides('four-thirds')).toEqual([17.3, 13]);
  });

  it('hold the usual widths of paper rolls, 26 to 140 inches', () => {
    const widths = [...models.backdrops.values()].map(({ width }) => width);
    expect(widths).toEqual([0.66, 1.35, 2.18, 2.72, 3.55]);
    [26, 53, 86, 107, 140].forEach((inches, i) => {
      expect(Math.abs((widths[i] as number) - inches * 0.0254)).toBeLessThan(0.01);
    });
  });

  it('follow their stated rule for the circle of confusion', () => {
    for (const format of models.formats.values()) {
      const share = format.circleOfConfusion / Math.hypot(format.longSide, format.shortSide);
      // 0.030 mm on a diagonal of 43.27 mm, written to 0.1 micrometre.
      expect(Math.abs(share * 43.267 - 0.03)).toBeLessThan(0.0004);
    }
    // From memory, common practice: 0.019 to 0.020 mm on APS-C, 0.015 on 4/3, 0.1 on 4 x 5 in.
    expect(models.formats.get('aps-c-23-6')?.circleOfConfusion).toBeCloseTo(0.0197e-3, 7);
    expect(models.formats.get('four-thirds')?.circleOfConfusion).toBeCloseTo(0.015e-3, 7);
    expect(models.formats.get('sheet-4x5')?.circleOfConfusion).toBeCloseTo(0.106e-3, 6);
  });

  it('give lenses whose near limit is physical', () => {
    for (const lens of models.lenses.values()) {
      const [, longest] = lens.focal;
      const [, nearest] = lens.nearestFocus;
      expect(lens.length, lens.id).toBeLessThan(nearest);
      const m = lens.largestMagnification;
      if (m === undefined) continue;
      // f = D / (2 + m + 1/m): a lens that breathes acts shorter near, never longer (2 % for rounding).
      expect(nearest / (2 + m + 1 / m), lens.id).toBeLessThan(longest * 1.02);
      expect(nearest / (2 + m + 1 / m), lens.id).toBeGreaterThan(longest * 0.5);
    }
  });

  it('give the internal-focus zoom the effective focal length its printed table shows', () => {
    // Printed manual of a 70-200 mm f/4 zoom, page 212: 1/m = 3.7 at 1.0 m, hence 167.5 mm.
    const lens = models.lenses.get('70-200-f4-zoom');
    const m = lens?.largestMagnification ?? 0;
    expect(1000 / (2 + m + 1 / m)).toBeCloseTo(167.5, 0);
  });

  it('are listed by size', () => {
    expect([...models.framings.keys()]).toEqual([
      'close-up',
      'headshot',
      'head-and-shoulders',
      'half-length',
      'three-quarter',
      'full-length',
    ]);
    const focal = [...models.lenses.values()].map((lens) => lens.focal[0]);
    expect(focal).toEqual(focal.toSorted((a, b) => a - b));
  });
});

describe('a broken file', () => {
  it.each([
    [
      'lenses/85-f1-8.json',
      (file: Record<string, unknown>) => {
        file.widest_f_number = [1.8, 'wide'];
      },
      'models/lenses/85-f1-8.json: widest_f_number.1: expected number, received "wide"',
    ],
    [
      'lenses/85-f1-8.json',
      (file: Record<string, unknown>) => {
        file.focal_mm = [85, -85];
      },
      'models/lenses/85-f1-8.json: focal_mm.1: expected >0, received -85',
    ],
    [
      'lenses/85-f1-8.json',
      (file: Record<string, unknown>) => {
        file.focal_mm = [100, 85];
      },
      'models/lenses/85-f1-8.json: focal_mm: expected the shorter mark first',
    ],
    [
      'lenses/85-f1-8.json',
      (file: Record<string, unknown>) => {
        file.smallest_f_number = 1;
      },
      'models/lenses/85-f1-8.json: smallest_f_number: expected at least the larger of widest_f_number',
    ],
    [
      'formats/full-frame.json',
      (file: Record<string, unknown>) => {
        delete file.long_side_mm;
      },
      'models/formats/full-frame.json: long_side_mm: expected a value, but it is missing',
    ],
    [
      'formats/full-frame.json',
      (file: Record<string, unknown>) => {
        file.short_side_mm = 40;
      },
      'models/formats/full-frame.json: short_side_mm: expected at most long_side_mm',
    ],
    [
      'formats/full-frame.json',
      (file: Record<string, unknown>) => {
        file.longside = 36;
      },
      'models/formats/full-frame.json: longside: expected no such field',
    ],
    [
      'framings/headshot.json',
      (file: Record<string, unknown>) => {
        file.orientation = 'upright';
      },
      "models/framings/headshot.json: orientation: expected ('portrait' | 'landscape'), received \"upright\"",
    ],
    [
      'framings/headshot.json',
      (file: Record<string, unknown>) => {
        file.id = 'head-shot';
      },
      'models/framings/headshot.json: id: expected the file\'s name "headshot", received "head-shot"',
    ],
    [
      'sitters/adult-woman.json',
      (file: Record<string, unknown>) => {
        (file.dimensions as Record<string, unknown>).stature = { mm: '1626' };
      },
      'models/sitters/adult-woman.json: dimensions.stature.mm: expected number, received "1626"',
    ],
  ])('%s names itself, the field and what was expected', (path, change, fault) => {
    expect(faultsOf(withChange(path, change))).toContain(fault);
  });

  it('does not hide a second one', () => {
    const faults = faultsOf({ ...files, 'lenses/35-f2.json': null, 'lenses/85-f1-8.json': [] });
    expect(faults.some((fault) => fault.includes('35-f2.json: expected an object'))).toBe(true);
    expect(faults.some((fault) => fault.includes('85-f1-8.json'))).toBe(true);
  });

  it('is reported when a whole folder is missing', () => {
    const rest = Object.fromEntries(
      Object.entries(files).filter(([path]) => !path.startsWith('lenses/')),
    );
    expect(faultsOf(rest)).toEqual(['models/lenses: expected at least one sound file']);
  });
});

describe('a new file', () => {
  it('is a new lens, with nothing else to edit', () => {
    const lens = { ...(files['lenses/85-f1-8.json'] as object), id: '85-new', name: '85 mm, new' };
    expect(parseModels({ ...files, 'lenses/85-new.json': lens }).lenses.get('85-new')?.name).toBe(
      '85 mm, new',
    );
  });
});
