import { profileOutline } from '../../src/drawings/profile/outline';
import type { RailContent, RailSheet } from '../../src/drawings/rail/types';
import { estimateText } from '../../src/drawings/text-width';
import { REGION, type Sitter, type SitterMesh, type Substance } from '../../src/sitter/types';

type Triple = readonly [number, number, number];

/** A closed ellipsoid as a mesh. */
export function ellipsoid(
  centre: Triple,
  radii: Triple,
  substance: Substance = 'skin',
  region: number = REGION.none,
  rings = 48,
): SitterMesh {
  const around = 2 * rings;
  const positions: number[] = [];
  const indices: number[] = [];
  for (let i = 0; i <= rings; i += 1) {
    const down = (Math.PI * i) / rings;
    for (let j = 0; j <= around; j += 1) {
      const turn = (2 * Math.PI * j) / around;
      positions.push(
        centre[0] + radii[0] * Math.sin(down) * Math.cos(turn),
        centre[1] + radii[1] * Math.cos(down),
        centre[2] + radii[2] * Math.sin(down) * Math.sin(turn),
      );
    }
  }
  for (let i = 0; i < rings; i += 1) {
    for (let j = 0; j < around; j += 1) {
      const at = i * (around + 1) + j;
      indices.push(at, at + 1, at + around + 1, at + 1, at + around + 2, at + around + 1);
    }
  }
  const count = positions.length / 3;
  return {
    name: substance,
    substance,
    positions: new Float32Array(positions),
    normals: new Float32Array(3 * count),
    colours: new Uint8Array(3 * count),
    openness: new Uint8Array(count).fill(255),
    indices: new Uint32Array(indices),
    regions: new Uint8Array(count).fill(region),
  };
}

/** A sitter as far as a profile needs one. */
export function sitterOf(...meshes: SitterMesh[]): Sitter {
  return { meshes, landmarks: { suprasternale: [0, -0.24, -0.06] } } as unknown as Sitter;
}

export const MANIKIN = sitterOf(
  ellipsoid([0, 0.03, -0.085], [0.076, 0.1, 0.1]),
  ellipsoid([0, -0.06, -0.04], [0.06, 0.065, 0.055]),
  ellipsoid([0, -0.03, 0.018], [0.012, 0.012, 0.018]),
  ellipsoid([0, -0.15, -0.09], [0.055, 0.12, 0.06]),
  ellipsoid([-0.076, -0.012, -0.082], [0.012, 0.032, 0.018], 'skin', REGION.earRight),
  ellipsoid([0.076, -0.012, -0.082], [0.012, 0.032, 0.018], 'skin', REGION.earLeft),
  ellipsoid([0, 0.06, -0.095], [0.08, 0.08, 0.1], 'hair'),
  ellipsoid([0, -0.55, -0.1], [0.2, 0.33, 0.12], 'top'),
  ellipsoid([0, -1.1, -0.1], [0.17, 0.45, 0.11], 'trousers'),
);

export const SHEET: RailSheet = { width: 1340, rem: 16, measure: estimateText };

/** A headshot from 0.40 m and 2.40 m in a small room. */
export const HEADSHOT: RailContent = {
  units: 'metric',
  scale: 'even',
  figure: profileOutline(MANIKIN),
  room: { backdrop: 1.2, rearWall: 1.4, cameraWall: 3.8, behindCamera: 0.6 },
  pictures: (['A', 'B'] as const).map((letter, i) => ({
    letter,
    standpoint: i === 0 ? 0.4 : 2.4,
    cameraHeight: 0,
    frame: { top: 0.16, bottom: -0.26 },
    min: 0.2,
    max: 3.05,
  })),
  focus: [
    { distance: 0.35, letter: 'A' },
    { distance: 0.92, letter: 'B' },
  ],
};
