import { type Stand, shadesLight, standInPicture } from '../../plan/lights';
import type { PlanRoom } from '../../plan/types';
import type { Letter } from '../../session/types';
import type { Shown } from '../compare/shown';

/** In which pictures a stand is seen, and whose camera stands in its light. */
export function standsIn(
  stand: Stand,
  pictures: readonly Shown[],
  room: PlanRoom,
): { readonly inPicture: readonly Letter[]; readonly shadedBy: readonly Letter[] } {
  const letters = (found: readonly Shown[]) => found.map(({ letter }) => letter);
  return {
    inPicture: letters(
      pictures.filter(({ resolved }) => standInPicture(resolved.camera, stand, room)),
    ),
    shadedBy: letters(
      pictures.filter(({ resolved: { camera, focusDistance, tapeDistance, lens } }) => {
        const sensor = camera.position[2] + tapeDistance - focusDistance;
        const photographer = {
          front: sensor - (lens?.length ?? 0),
          back: sensor + room.behindCamera,
          lensHeight: camera.position[1] - room.floor,
        };
        return shadesLight(stand, photographer, room);
      }),
    ),
  };
}
