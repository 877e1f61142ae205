/** Prints the seeds of both shapes and the dimensions they imply. */
import { type HeadLandmark, seeds } from '../head/seeds';
import { SHAPES } from '../head/shape';

for (const shape of Object.values(SHAPES)) {
  const s = seeds(shape);
  const gap = (a: HeadLandmark, b: HeadLandmark): number =>
    Math.hypot(...[0, 1, 2].map((j) => (s[a][j] as number) - (s[b][j] as number)));
  console.log(`\n${shape.id}`);
  for (const [name, p] of Object.entries(s))
    console.log(name.padEnd(18), p.map((c) => c.toFixed(1).padStart(8)).join(''));
  const tip = s.pronasale[2];
  console.log({
    head_breadth: 2 * s.euryon[0],
    head_length: gap('glabella', 'opisthocranion'),
    vertex_menton: s.vertex[1] - s.menton[1],
    vertex_eyes: s.vertex[1],
    menton_sellion: gap('menton', 'sellion'),
    bizygomatic: 2 * s.zygion[0],
    bigonial: 2 * s.gonion[0],
    bitragion: 2 * s.tragion[0],
    frontal: 2 * s.frontotemporale[0],
    nose_length: gap('sellion', 'subnasale'),
    nose_breadth: 2 * s.alare[0],
    nose_protrusion: gap('pronasale', 'subnasale'),
    lip_length: gap('cheilion', 'stomion') && 2 * s.cheilion[0],
    ear_length: gap('superaurale', 'subaurale'),
    depths: ['pupil', 'ectocanthion', 'zygion', 'tragion', 'opisthocranion', 'sellion'].map(
      (k) => `${k} ${(tip - s[k as HeadLandmark][2]).toFixed(1)}`,
    ),
  });
}
