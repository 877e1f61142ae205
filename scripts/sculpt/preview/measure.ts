/** Prints the seeds of both shapes and the dimensions they imply. */

import { neckAndShoulders } from '../head/neck';
import { type HeadLandmark, seeds } from '../head/seeds';
import { type HeadShape, SHAPES } from '../head/shape';
import { range, trace } from '../head/trace';

/** Girth of the neck in a plane square to its axis at the larynx. */
function neckGirth(shape: HeadShape): number {
  const field = neckAndShoulders(shape);
  const [, sy, sz] = shape.scale;
  const lean = 0.35;
  const points = range(0, 2 * Math.PI, 0.05).map((a): [number, number] => {
    const [s, c] = [Math.sin(a), Math.cos(a)];
    const direction = [-s, c * Math.sin(lean), -c * Math.cos(lean)] as const;
    const centre = [0, -122 * sy, -98 * sz] as const;
    const from = centre.map((v, j) => v - 120 * (direction[j] as number)) as [
      number,
      number,
      number,
    ];
    const p = trace(field, from, direction) ?? from;
    return [p[0], (p[2] - centre[2]) / Math.cos(lean)];
  });
  return points.reduce((sum, p, i) => {
    const q = points[(i + 1) % points.length] as [number, number];
    return sum + Math.hypot(q[0] - p[0], q[1] - p[1]);
  }, 0);
}

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
    neck_girth: neckGirth(shape),
    depths: ['pupil', 'ectocanthion', 'zygion', 'tragion', 'opisthocranion', 'sellion'].map(
      (k) => `${k} ${(tip - s[k as HeadLandmark][2]).toFixed(1)}`,
    ),
  });
}
