import { dimensionsOf } from '../../src/models/framing';
import { loadModels } from '../../src/models/node';
import { unsculpted } from '../../src/session/cast';
import type { ActionContext } from '../../src/session/follow';
import type { ResolvedPicture } from '../../src/session/resolve';
import { resolvePicture } from '../../src/session/resolve';
import type { Body, Letter, Picture, Session } from '../../src/session/types';
import { REGION, type Sitter, type SitterMesh } from '../../src/sitter/types';

export const models = loadModels();

export function must<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error('expected a value');
  return value;
}

/** A ball as head, since its drawn outline has a closed form. */
export const BALL = { centre: [0, -0.02, -0.08], radius: 0.11 } as const;

function ball(): SitterMesh {
  const rings = 400;
  const positions: number[] = [];
  for (let i = 0; i <= rings; i++) {
    const polar = (Math.PI * i) / rings;
    for (let j = 0; j < 64; j++) {
      const around = (2 * Math.PI * j) / 64;
      positions.push(
        BALL.centre[0] + BALL.radius * Math.sin(polar) * Math.sin(around),
        BALL.centre[1] + BALL.radius * Math.cos(polar),
        BALL.centre[2] + BALL.radius * Math.sin(polar) * Math.cos(around),
      );
    }
  }
  const count = positions.length / 3;
  return {
    name: 'ball',
    substance: 'skin',
    positions: new Float32Array(positions),
    normals: new Float32Array(positions.length),
    colours: new Uint8Array(positions.length),
    indices: new Uint32Array(),
    openness: new Uint8Array(count).fill(255),
    regions: new Uint8Array(count).fill(REGION.face),
  };
}

const dimensions = dimensionsOf(must(models.sitters.get('adult-woman')));

/** Landmarks of the adult woman, without a mesh. */
export const sitter: Sitter = unsculpted(dimensions);

export const ballSitter: Sitter = {
  ...sitter,
  landmarks: {
    ...sitter.landmarks,
    vertex: [0, BALL.centre[1] + BALL.radius, BALL.centre[2]],
    // On the ball, amid the places where its lower outline lies, seen from near to far.
    menton: [0, BALL.centre[1] - Math.sqrt(BALL.radius ** 2 - 0.013 ** 2), BALL.centre[2] + 0.013],
  },
  meshes: [ball()],
};

/** The session with these lenses alone in its kit. */
export function withLenses(session: Session, ...lenses: string[]): Session {
  const [kit] = session.kits;
  return { ...session, kits: [{ ...kit, lenses }] };
}

/** The session with another body of its kit. */
export function withBody(session: Session, change: Partial<Body>): Session {
  const [kit] = session.kits;
  return { ...session, kits: [{ ...kit, bodies: [{ ...kit.bodies[0], ...change }] }] };
}

export const context: ActionContext = { models, cast: { '1': sitter } };
export const ballContext: ActionContext = { models, cast: { '1': ballSitter } };

export const picture = (session: Session, letter: Letter): Picture =>
  must(session.pictures.find((each) => each.letter === letter));

export const resolve = (
  session: Session,
  letter: Letter,
  around: ActionContext = context,
): ResolvedPicture => resolvePicture(session, picture(session, letter), around.models, around.cast);
