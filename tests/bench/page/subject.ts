/** What both sides draw: the demo session's two pictures, small, and each again from 1 mm farther off. */
import { models, sculptureUrls } from '../../../src/models/browser';
import { demoSession } from '../../../src/session/demo';
import { known } from '../../../src/session/known';
import { resolvePicture } from '../../../src/session/resolve';
import type { Session } from '../../../src/session/types';
import { buildSitter } from '../../../src/sitter/build';
import { sculptures } from '../../../src/sitter/compose';
import type { Sitter } from '../../../src/sitter/types';
import type { StagePicture } from '../../../src/stage';

export const PICTURE = { width: 300, height: 450 } as const;
const GAP = 10;
export const CANVAS = { width: 2 * PICTURE.width + GAP, height: PICTURE.height } as const;

const STEP = 0.001;

export interface Subject {
  readonly session: Session;
  readonly sitter: Sitter;
  /** Two states of the wall between which every picture changes. */
  readonly states: readonly [readonly StagePicture[], readonly StagePicture[]];
}

export async function loadSubject(): Promise<Subject> {
  const session = demoSession();
  const model = known(models.sitters, session.people[0].model);
  const read = async (name: string): Promise<Uint8Array> =>
    new Uint8Array(await (await fetch(sculptureUrls[name] as string)).arrayBuffer());
  const sculpture = await sculptures(read)(model, model.looks);
  const sitter = buildSitter(sculpture, model);
  const pictures = (farther: number): StagePicture[] =>
    session.pictures.map((picture, i) => {
      const moved = { ...picture, standpoint: picture.standpoint + farther };
      return {
        letter: picture.letter,
        camera: resolvePicture(session, moved, models, { '1': sitter }).camera,
        rect: { x: i * (PICTURE.width + GAP), y: 0, ...PICTURE },
      };
    });
  return { session, sitter, states: [pictures(0), pictures(STEP)] };
}
