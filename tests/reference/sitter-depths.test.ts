import { beforeAll, describe, expect, it } from 'vitest';
import type { Vec3 } from '../../src/optics/types';
import type { LandmarkName, Sitter } from '../../src/sitter/types';
import { everyone } from '../sitter/people';

/** Median woman and man, in this order. */
let sitters: Sitter[] = [];
beforeAll(async () => {
  sitters = (await everyone()).map(({ sitter }) => sitter);
});

const at = (sitter: Sitter, name: LandmarkName): Vec3 => {
  const [m, v] = sitter.landmarkVertices[name];
  return [...(sitter.meshes[m]?.positions.subarray(3 * v, 3 * v + 3) ?? [])].map(
    (c) => 1000 * c,
  ) as unknown as Vec3;
};
const depth = (s: Sitter, front: LandmarkName, back: LandmarkName): number =>
  at(s, front)[2] - at(s, back)[2];
const straight = (s: Sitter, a: LandmarkName, b: LandmarkName): number =>
  Math.hypot(...[0, 1, 2].map((j) => (at(s, a)[j] as number) - (at(s, b)[j] as number)));

interface Check {
  readonly what: string;
  readonly found: number;
  readonly published: number;
  readonly tolerance: number;
}

function judge(title: string, checks: readonly Check[]): void {
  console.log(
    [
      title,
      ...checks.map(
        ({ what, found, published, tolerance }) =>
          `  ${what.padEnd(46)} ${found.toFixed(1).padStart(6)} mm, published ${published.toFixed(1).padStart(6)}, residual ${(found - published).toFixed(1).padStart(5)} (tolerance ${tolerance.toFixed(1)})`,
      ),
    ].join('\n'),
  );
  for (const { what, found, published, tolerance } of checks)
    expect(Math.abs(found - published), what).toBeLessThanOrEqual(tolerance);
}

/**
 * Source: NIOSH/ISO digital head form, size medium (Zhuang, Benson, Viscusi 2010, Ergonomics
 * 53(5):661-671); landmarks read from the public mesh, uncertain by 0.5 to 5 mm each. One form for
 * both sexes, so it is compared with the mean of the woman and the man. The first three depths of
 * the sitters' files are themselves derived from it: their residuals check the mesh alone.
 * Tolerance: reading uncertainty of both ends plus 3 mm for one smoothed form against two medians.
 */
const HEAD_FORM: readonly (readonly [LandmarkName, LandmarkName, number, number])[] = [
  ['pronasale', 'pupil_left', 34.2, 5.5],
  ['pronasale', 'ectocanthion_left', 43.1, 6.5],
  ['pronasale', 'sellion', 21.4, 4],
  ['pronasale', 'subnasale', 15.2, 5],
  ['pronasale', 'alare_left', 22.5, 5.5],
  ['pronasale', 'zygion_left', 84.7, 8.5],
  ['pronasale', 'tragion_left', 114.9, 6.5],
  ['pupil_left', 'tragion_left', 80.7, 8],
  ['sellion', 'tragion_left', 93.5, 6.5],
  ['tragion_left', 'opisthocranion', 97.6, 6.5],
  ['pronasale', 'opisthocranion', 212.5, 4],
];

describe('the depths of the facial planes', () => {
  it('agree with the published head form', () => {
    judge(
      'Mean of woman and man against the medium NIOSH head form',
      HEAD_FORM.map(([front, back, published, tolerance]) => ({
        what: `${front} to ${back}`,
        found: sitters.reduce((sum, s) => sum + depth(s, front, back), 0) / sitters.length,
        published,
        tolerance,
      })),
    );
  });

  /**
   * Sources: Snyder et al. 1977 (UM-HSRI-77-17), ages 16.5 to 20, individual records; Flury and
   * Riedwyl 1988 (soldiers of 20), caliper distances. Tolerance: 1.5 standard deviations of each
   * sample, since these are other people than the surveys the sitters come from.
   */
  it('agree with other samples of people', () => {
    const samples: readonly (readonly [
      string,
      (s: Sitter) => number,
      readonly (readonly [mean: number, sd: number])[],
    ])[] = [
      [
        'tragion to back of head (Snyder)',
        (s) => depth(s, 'tragion_left', 'opisthocranion'),
        [
          [95.5, 8.3],
          [97.3, 8.8],
        ],
      ],
      [
        'sellion to tragion (Snyder)',
        (s) => depth(s, 'sellion', 'tragion_left'),
        [
          [93.8, 5.8],
          [106, 7.2],
        ],
      ],
      [
        'tragion to tragion (Snyder)',
        (s) => straight(s, 'tragion_left', 'tragion_right'),
        [
          [125.5, 4.2],
          [130.4, 4.9],
        ],
      ],
      [
        'vertex to menton (Snyder)',
        (s) => at(s, 'vertex')[1] - at(s, 'menton')[1],
        [
          [205.2, 8.8],
          [219.6, 10.6],
        ],
      ],
      [
        'tragion to sellion, straight (Flury)',
        (s) => straight(s, 'tragion_left', 'sellion'),
        [
          [118.8, 5.1],
          [122.2, 3.9],
        ],
      ],
      [
        'tragion to menton, straight (Flury)',
        (s) => straight(s, 'tragion_left', 'menton'),
        [
          [130, 6.1],
          [138.8, 5.6],
        ],
      ],
      [
        'glabella to nose tip, straight (Flury)',
        (s) => straight(s, 'glabella', 'pronasale'),
        [
          [55.1, 4.4],
          [58, 4.2],
        ],
      ],
    ];
    judge(
      'Woman, then man, against other samples',
      samples.flatMap(([what, of, published]) =>
        sitters.map((sitter, i) => {
          const [mean, sd] = published[i] as readonly [number, number];
          return { what, found: of(sitter), published: mean, tolerance: 1.5 * sd };
        }),
      ),
    );
  });

  // Source: mean of a set of light-stage face scans (ICT-FaceKit, MIT licence), read from the public
  // mesh; young adults, unit assumed to be cm. Tolerance: 4 mm, one form against two medians.
  it('agree with a mean of face scans', () => {
    judge(
      'Mean of woman and man against face scans',
      (
        [
          ['ectocanthion_left', 44.7],
          ['endocanthion_left', 38.7],
          ['sellion', 23.4],
          ['subnasale', 15],
        ] as const
      ).map(([name, published]) => ({
        what: `nose tip to ${name}`,
        found: sitters.reduce((sum, s) => sum + depth(s, 'pronasale', name), 0) / sitters.length,
        published,
        tolerance: 4,
      })),
    );
  });
});
