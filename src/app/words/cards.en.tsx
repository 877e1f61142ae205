import type { Caution } from '../../plan/cautions';
import type { Move } from '../../plan/shooting-list';

/** The set-up cards and the list for the day, in English. */
export const cards = {
  open: 'Cards for the day',
  title: 'Cards for the day',
  print: 'Print the cards',
  list: 'In shooting order',
  drawings: (scale: number) => `The room, 1 : ${scale}`,
  first: 'begin here',
  moves: {
    standpoint: 'move the camera',
    body: 'change the body',
    lens: 'change the lens',
    height: 'change the camera’s height',
  } satisfies Record<Move, string>,
  stay: 'stay where you are',
  left: 'Not possible here',
  leftWays: (ways: string) => (ways === '' ? '' : ` Would work: ${ways}.`),
  none: 'Nothing that is wanted works here yet. See “What works here”.',
  lines: {
    lens: 'Lens',
    body: 'Body',
    standpoint: 'Eyes to lens',
    tape: 'On the tape, from the sensor mark',
    height: 'Lens above the floor',
    aperture: 'Aperture',
    sharp: 'Sharp, from the lens',
    backdrop: 'Sitter to backdrop',
    used: 'Backdrop needed',
    light: 'Key light, face to backdrop',
    frame: 'Frame at the eyes',
  },
  at: (lens: string, mark: string) => `${lens}, set to ${mark}`,
  sharpFrom: (near: string, far: string) => `${near} to ${far}`,
  endless: 'the far wall and beyond',
  size: (width: string, height: string) => `${width} wide, ${height} high`,
  falls: (stops: string, rises: boolean) => `${rises ? 'rises' : 'falls'} by ${stops} stops`,
  cautions: {
    'close-to-face':
      'The lens comes close to a face. Ask first, move slowly, keep straps and cables short.',
    'raised-camera':
      'The camera is raised. A firm support, a second person to hold it, nobody below.',
    'stands-and-cables': 'Weigh every stand, tape cables down, keep the way to the door free.',
    'light-near-eyes':
      'A light is near the eyes. Turn it down before it is moved; nobody looks into it.',
    child: 'A child sits. The parent stays within reach; ask both before you come near.',
    steps: 'People stand on steps. Steady steps, a hand for who needs one, nobody steps back.',
  } satisfies Record<Caution, string>,
  rules: 'Rules of the house and local rules come first.',
  computed:
    'Worked out from the room, the kit and the sitter’s own measures. Lens figures are those of the kit; check the first frame.',
};
