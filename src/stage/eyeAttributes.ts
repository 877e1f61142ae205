/** Where each vertex of the eyes lies on its own eye, so that the shader can draw the iris there. */
import { type EyeFrame, eyeFrames } from '../sitter/gaze';
import type { SitterMesh } from '../sitter/types';

const dot = (a: ArrayLike<number>, b: ArrayLike<number>): number =>
  (a[0] as number) * (b[0] as number) +
  (a[1] as number) * (b[1] as number) +
  (a[2] as number) * (b[2] as number);

/** xyz triples: place on the eye, mm; the eye's upward and outward axes; the iris' colour, linear 0..1. */
export type EyeAttributes = Readonly<
  Record<'eyePlace' | 'eyeUp' | 'eyeAxis' | 'irisColour', Float32Array>
>;

export function eyeAttributes(mesh: SitterMesh): EyeAttributes {
  const { positions, colours } = mesh;
  const all: EyeAttributes = {
    eyePlace: new Float32Array(positions.length),
    eyeUp: new Float32Array(positions.length),
    eyeAxis: new Float32Array(positions.length),
    irisColour: new Float32Array(positions.length),
  };
  const put = (eye: EyeFrame) => {
    const iris = colours.subarray(3 * eye.first, 3 * eye.first + 3);
    for (let v = eye.first; v < eye.end; v++) {
      const off = [0, 1, 2].map(
        (j) => 1000 * ((positions[3 * v + j] as number) - (eye.pupil[j] as number)),
      );
      all.eyePlace.set([dot(off, eye.right), dot(off, eye.up), dot(off, eye.out)], 3 * v);
      all.eyeUp.set(eye.up, 3 * v);
      all.eyeAxis.set(eye.out, 3 * v);
      all.irisColour.set(
        Array.from(iris, (value) => value / 255),
        3 * v,
      );
    }
  };
  for (const eye of eyeFrames(mesh)) put(eye);
  return all;
}
