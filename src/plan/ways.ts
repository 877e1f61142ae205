/** The figures of a request that can be changed, each with its direction. Metres. */
import {
  type Asking,
  longer,
  roomOf,
  sitterAt,
  staysIn,
  withAsked,
  withRoom,
  withWanted,
} from './changes';
import type { Way } from './smallest';
import type { Change } from './types';

/** Steps in which changes are told: lengths and distances, focal lengths, shares. */
export const CENTIMETRE = 0.01;
const MILLIMETRE = 0.001;
const SHARE = 0.005;

/** How far a change is looked for, metres, metres, shares. */
const MOST = { room: 20, focal: 1.2, leastFocal: 0.008, cameraHeight: 1.5, gain: 1, frame: 6 };

/** Everything with a size that can be more or less, apart from the backdrop and the aperture. */
export function ways(asking: Asking): Way[] {
  const { wanted, camera, request } = asking;
  const room = roomOf(asking);
  const { backdrop } = room;
  const { lens } = camera;
  const [shortest, longest] = lens.focal;
  const run = backdrop.behind + room.wallBehindCamera;
  const withFocal = (marks: readonly [number, number]): Asking => ({
    ...asking,
    camera: { ...camera, marks },
  });
  const heights = { least: room.floor + 0.1, most: room.ceiling - 0.1 };
  const fixed = wanted.frameHeight;
  const { noseGain } = request.asked;
  const to = (change: 'sitter-to-backdrop' | 'camera-height' | 'eyes-at') => (value: number) =>
    ({ change, to: value }) as Change;
  const frame = (atLeast: boolean) => (value: number) =>
    ({ change: 'frame-height', to: value, atLeast }) as const;
  const found: Way[] = [
    ...(staysIn(room)
      ? [
          {
            now: 0,
            to: MOST.room,
            step: CENTIMETRE,
            with: (by: number) => withRoom(asking, longer(room, by)),
            change: (by: number) => ({ change: 'room-length', by }) as const,
            scale: run,
            moreHelps: true,
          },
        ]
      : []),
    {
      now: longest,
      to: MOST.focal,
      step: MILLIMETRE,
      with: (focal) => withFocal([shortest, focal]),
      change: (focal) => ({ change: 'focal', to: focal, atLeast: true }),
      scale: longest,
      moreHelps: true,
    },
    {
      now: shortest,
      to: MOST.leastFocal,
      step: MILLIMETRE,
      with: (focal) => withFocal([focal, longest]),
      change: (focal) => ({ change: 'focal', to: focal, atLeast: false }),
      scale: shortest,
      moreHelps: true,
    },
    ...[0.3, run - 0.5].map(
      (end): Way => ({
        now: backdrop.behind,
        to: end,
        step: CENTIMETRE,
        with: (behind) => withRoom(asking, sitterAt(room, behind)),
        change: to('sitter-to-backdrop'),
        scale: run,
      }),
    ),
    ...[heights.least, heights.most].map(
      (end): Way => ({
        now: wanted.cameraHeight,
        to: Math.sign(end) * Math.min(Math.abs(end), MOST.cameraHeight),
        step: CENTIMETRE,
        with: (cameraHeight) => withWanted(asking, { cameraHeight }),
        change: to('camera-height'),
        scale: 1,
      }),
    ),
    ...[0.15, 0.7].map(
      (end): Way => ({
        now: wanted.eyesAt,
        to: end,
        step: CENTIMETRE,
        with: (eyesAt) => withWanted(asking, { eyesAt }),
        change: to('eyes-at'),
        scale: 0.5,
      }),
    ),
    ...(fixed === null
      ? []
      : [MOST.frame, 0.1].map(
          (end): Way => ({
            now: fixed,
            to: end,
            step: CENTIMETRE,
            with: (frameHeight) => withWanted(asking, { frameHeight }),
            change: frame(end > fixed),
            scale: fixed,
          }),
        )),
    ...(noseGain === null
      ? []
      : [
          {
            now: noseGain,
            to: MOST.gain,
            step: SHARE,
            with: (value: number) => withAsked(asking, { noseGain: value }),
            change: (value: number) => ({ change: 'nose-gain', to: value }) as const,
            scale: noseGain,
            moreHelps: true,
          },
        ]),
  ];
  return found.filter((way) => way.to !== way.now);
}
