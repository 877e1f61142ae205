/** What the readings of one picture cost, against drawing every landmark once. */
import { projectInPicture } from '../../src/optics/camera';
import { readPicture } from '../../src/readings/read';
import { visibility } from '../../src/readings/visibility';
import { LANDMARKS } from '../../src/sitter/types';
import { picture } from '../readings/picture';
import { everyone } from '../sitter/people';
import type { Line } from './line';
import { compareCost } from './pairs';

const PLAIN = `${LANDMARKS.length} landmarks projected once`;

export async function readingLines(): Promise<Line[]> {
  const [someone] = await everyone();
  if (!someone) throw new Error('no sitter');
  const { sitter } = someone;
  const input = { ...picture({ standpoint: 0.4 }), sitter };
  const { position } = input.camera;
  const project = () =>
    LANDMARKS.map((name) => projectInPicture(input.camera, sitter.landmarks[name]));
  const seen = visibility(sitter, position);
  // Meshes never seen before have no ray trees yet.
  const newcomer = () => ({ ...sitter, meshes: sitter.meshes.map((mesh) => ({ ...mesh })) });
  return [
    {
      name: 'readings of one picture',
      ratio: await compareCost(() => readPicture(input, { visibility: seen }), project, 15),
      sides: `all rows with their words, visible shares known / ${PLAIN}`,
    },
    {
      name: 'visible shares of one picture',
      ratio: await compareCost(() => visibility(sitter, position), project, 7),
      sides: `rays against the meshes, their trees built / ${PLAIN}`,
    },
    {
      name: 'visible shares of a new sitter',
      ratio: await compareCost(() => visibility(newcomer(), position), project, 5),
      sides: `the same, the ray trees built anew / ${PLAIN}`,
    },
  ];
}
