/** What a plan costs: every framing of every sitter with every lens, against one depth of each pair. */
import { loadModels } from '../../src/models/node';
import { metres } from '../../src/optics/units';
import { type PlanCamera, type PlanPerson, type PlanRequest, solvePlan } from '../../src/plan';
import { holdsAt } from '../plan/grid';
import { FORMATS, PEOPLE } from '../plan/random';
import type { Line } from './line';
import { compareCost } from './pairs';

const SITTERS = 30;
const LENSES = 30;
/** Frame heights from a close-up to full length, metres, with the eyes' place from the top. */
const FRAMINGS = [
  [0.26, 0.42],
  [0.34, 0.42],
  [0.45, 0.38],
  [0.6, 0.33],
  [0.85, 0.26],
  [1.1, 0.22],
  [1.4, 0.18],
  [2, 0.135],
] as const;
/** A depth to ask one pair at; any will do. */
const DEPTH = 2;

/** 30 lenses: those of models/, and some again with longer marks. */
function cameras(): PlanCamera[] {
  const lenses = [...loadModels().lenses.values()];
  const format = FORMATS.find(({ id }) => id === 'full-frame') ?? FORMATS[0];
  if (!format) throw new Error('no format');
  return Array.from({ length: LENSES }, (_, i) => {
    const lens = lenses[i % lenses.length];
    if (!lens) throw new Error('no lens');
    const longer = i < lenses.length ? 1 : 1.1;
    return {
      id: `${i}`,
      bodyName: 'body',
      lensId: lens.id,
      lensName: lens.name,
      format,
      lens: {
        ...lens,
        focal: [metres(lens.focal[0] * longer), metres(lens.focal[1] * longer)] as const,
      },
    };
  });
}

/** A room of 7 x 4 m with one thing in it; the defaults of what is asked. */
export function planRequest(): PlanRequest {
  return {
    cameras: cameras(),
    room: {
      floor: -1.5,
      ceiling: 1.2,
      walls: [
        [-2, -1.7],
        [2, -1.7],
        [2, 5.3],
        [-2, 5.3],
      ],
      backdrop: { behind: 1.5, left: 1.36, right: -1.36, top: 1 },
      wallBehindCamera: 5.3,
      behindCamera: 0.6,
      obstacles: [
        {
          id: 'piano',
          name: 'piano',
          kind: 'thing',
          height: 1.2,
          outline: [
            [1.4, 0],
            [2, 0],
            [2, 1.5],
            [1.4, 1.5],
          ],
        },
      ],
    },
    wanted: FRAMINGS.flatMap(([frameHeight, eyesAt], f) =>
      Array.from({ length: SITTERS }, (_, i) => ({
        id: `${f} ${i}`,
        name: '',
        orientation: 'portrait' as const,
        eyesAt,
        eyesAcross: 0.5,
        frameHeight,
        margin: 0.05,
        cameraHeight: 0,
        people: [PEOPLE[i % PEOPLE.length] as PlanPerson] as const,
      })),
    ),
    asked: {
      noseGain: 0.08,
      rowDifference: 0.1,
      stretch: 0.1,
      personal: null,
      clearance: 0.3,
      sharp: 'eyes',
      fNumber: [1.4, 16],
      softness: null,
      backdropMargin: 0.05,
    },
  };
}

export async function planLines(): Promise<Line[]> {
  const asked = planRequest();
  // The oracle looks at a thing in the room point by point, which no plain way would: it gets an empty room.
  const empty = { ...asked, room: { ...asked.room, obstacles: [] } };
  const plain = () =>
    asked.wanted.map((wanted) => asked.cameras.map((one) => holdsAt(empty, wanted, one, DEPTH)));
  const pairs = asked.wanted.length * asked.cameras.length;
  return [
    {
      name: `plan of ${pairs} pairs`,
      ratio: await compareCost(() => solvePlan(asked), plain, 9),
      sides: `${LENSES} lenses x ${FRAMINGS.length} framings x ${SITTERS} sitters: intervals, settings, one standpoint / one depth of each asked once`,
    },
  ];
}
