/** The bodies and lenses of the kit in use, each body with each lens, as the plan takes them. */
import type { Models } from '../models/types';
import type { PlanCamera } from '../plan/types';
import { kitOf, lensesOf } from './kit';
import { known } from './known';
import type { Body, Session } from './types';

/** Id of a body with a lens on it. */
export const cameraId = (body: Pick<Body, 'id'>, lens: string): string => `${body.id}/${lens}`;

/** Body and lens of the kit in use that a camera of the plan stands for. */
export function cameraParts(
  session: Pick<Session, 'kits' | 'kit'>,
  camera: string,
): { readonly body: Body; readonly lens: string } | null {
  const { bodies, lenses } = kitOf(session);
  for (const body of bodies)
    for (const lens of lenses) if (cameraId(body, lens) === camera) return { body, lens };
  return null;
}

/** Every body of the kit in use with every lens of it. */
export function planCameras(session: Session, models: Models): PlanCamera[] {
  const { bodies, lenses } = kitOf(session);
  const all = lensesOf(session, models);
  return bodies.flatMap((body) =>
    lenses.map((id): PlanCamera => {
      const lens = known(all, id);
      return {
        id: cameraId(body, id),
        bodyName: body.name,
        lensId: id,
        lensName: lens.name,
        format: known(models.formats, body.format),
        lens,
      };
    }),
  );
}
