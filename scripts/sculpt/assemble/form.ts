import type { Asset } from '../asset';
import type { Field } from '../field';
import { type Form, headForms } from '../head/forms';
import { SHAPES } from '../head/shape';
import type { TriangleMesh } from '../mesh';
import { sourceHash } from '../source';
import type { Sex } from './detail';

/** Steps towards the form's surface. */
const STEPS = 6;
/** Half the width of the difference that gives the gradient, mm. */
const REACH = 0.25;
/** A point farther from the form than this after all steps has lost it, mm. */
const LOST = 1.5;
/** Form and figure agree where they differ by less than this, mm. */
const STILL = 0.004;

type Triple = [number, number, number];

function gradient(field: Field, [x, y, z]: Triple): Triple {
  return [
    (field(x + REACH, y, z) - field(x - REACH, y, z)) / (2 * REACH),
    (field(x, y + REACH, z) - field(x, y - REACH, z)) / (2 * REACH),
    (field(x, y, z + REACH) - field(x, y, z - REACH)) / (2 * REACH),
  ];
}

/** The point moved along the field's gradient onto its surface. */
function settled(field: Field, from: Triple): Triple {
  let p = from;
  for (let i = 0; i < STEPS; i++) {
    const d = field(...p);
    if (Math.abs(d) < STILL / 4) break;
    const g = gradient(field, p);
    const slope = g[0] ** 2 + g[1] ** 2 + g[2] ** 2 || 1;
    p = p.map((c, j) => c - (d * (g[j] as number)) / slope) as Triple;
  }
  return p;
}

/** Displacements of a skin's vertices (mm) to a form, and the form's normals there. */
export function displaced(
  skin: TriangleMesh,
  base: Field,
  { field, move }: Form,
): Pick<TriangleMesh, 'positions' | 'normals'> {
  const { positions: P, normals: N } = skin;
  const positions = new Float32Array(P.length);
  const normals = N.slice();
  for (let o = 0; o < P.length; o += 3) {
    const from: Triple = [P[o], P[o + 1], P[o + 2]] as Triple;
    const to = move(...from);
    // Simplified and open places stand off their field by a little, and keep that distance.
    const off = base(...from);
    const still = Math.hypot(...to.map((c, j) => c - (from[j] as number))) < STILL;
    if (still && Math.abs(field(...from) - off) < STILL) continue;
    const at = settled((x, y, z) => field(x, y, z) - off, [...to]);
    if (Math.abs(field(...at) - off) > LOST) continue;
    const by = at.map((c, j) => c - (from[j] as number));
    // The midline stays on the midline.
    if (Math.abs(from[0]) < 1e-6) by[0] = 0;
    positions.set(by, o);
    const g = gradient(field, at);
    const length = Math.hypot(...g) || 1;
    normals.set(
      g.map((c) => c / length),
      o,
    );
  }
  return { positions, normals };
}

/** Every form of a figure, by file name, made when called with the figure as it was made. */
export function formAssets(sex: Sex): Record<string, (figure: Asset, base: Field) => Asset> {
  return Object.fromEntries(
    Object.entries(headForms(SHAPES[sex])).map(([name, form]) => {
      const id = `${sex}-form-${name}`;
      const make = (figure: Asset, base: Field): Asset => {
        const skin = figure.meshes[0] as Asset['meshes'][number];
        const count = skin.positions.length / 3;
        return {
          id,
          source: sourceHash('figure'),
          meshes: [
            {
              name: 'skin',
              substance: 'skin',
              ...displaced(skin, base, form),
              indices: Uint32Array.of(0, 0, 0),
              openness: new Uint8Array(count),
              regions: new Uint8Array(count),
              masks: {},
            },
          ],
          landmarks: {},
          guides: {},
          anchors: {},
          body: {},
        };
      };
      return [id, make];
    }),
  );
}
