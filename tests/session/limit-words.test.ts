import { describe, expect, it } from 'vitest';
import { demoSession } from '../../src/session/demo';
import { limitSentence } from '../../src/session/limit-words';
import type { Picture, Session } from '../../src/session/types';
import { must, resolve, withLenses } from './fixtures';

const demo = demoSession();

/** The first limit of the second picture, in words. */
function said(
  change: Partial<Picture>,
  session: Partial<Session> = {},
  units: 'metric' | 'imperial' = 'metric',
) {
  const [a, b] = demo.pictures;
  const asked = { ...demo, ...session, pictures: [must(a), { ...must(b), ...change }] };
  return limitSentence(must(resolve(asked, 'B').limits[0]), units);
}

describe('a passed limit says which and what would do', () => {
  it.each([
    [
      said({}, withLenses(demo, '85-f1-8')),
      'The 85 mm f/1.8 ends at 85.0 mm; this picture needs 189.5 mm. Would do: stand at 1.07 m or nearer, or take a frame of 0.99 m or more.',
    ],
    [
      said({ standpoint: 0.5 }, withLenses(demo, '85-f1-8')),
      'The 85 mm f/1.8 begins at 85.0 mm; this picture needs 39.5 mm. Would do: stand at 1.08 m or farther, or take a frame of 0.17 m or less.',
    ],
    [
      said({ standpoint: 0.69, view: { by: 'lens', focal: 0.085 }, lens: '85-f1-8' }),
      'The 85 mm f/1.8 focuses from 0.80 m on the tape; this is 0.79 m. Would do: stand at 0.71 m or farther.',
    ],
    [
      // By hand: it acts as 171 mm at its near limit of 1.0 m, so that at 2.61 m on the tape it is
      // set to 227 mm; there its aperture, closing evenly from 4 to 5.6, is 5.25.
      said({ fNumber: 2.8 }),
      'The 70–300 mm f/4–5.6 zoom opens to f/5.3 here; f/2.8 was asked. Would do: use f/5.3 or a larger number.',
    ],
    [
      said({ view: { by: 'lens', focal: 0.5 }, standpoint: 0.4 }),
      'A lens of 500.0 mm focuses nothing as near as 0.40 m. Would do: use 105.8 mm or shorter, or stand at 1.89 m or farther.',
    ],
    [
      said({ view: { by: 'cut', focal: 0.3 } }),
      'From here the whole picture of 300.0 mm is smaller than the frame. Would do: use 189.4 mm or shorter, or stand at 3.80 m or farther.',
    ],
    [
      said({ standpoint: 3.2 }),
      'Your back meets the wall: the sensor can be 3.20 m from the eyes, this is 3.47 m. Would do: stand at 2.94 m or nearer.',
    ],
    [
      said({ cameraHeight: 1.5, standpoint: 1 }),
      "From this standpoint the camera can be at most 0.90 m above or below the eyes. Would do: bring the camera within 0.90 m of the eyes' height.",
    ],
    [
      said({ standpoint: 3.2 }, {}, 'imperial'),
      'Your back meets the wall: the sensor can be 10 ft 6 in from the eyes, this is 11 ft 5 in. Would do: stand at 9 ft 8 in or nearer.',
    ],
  ])('%s', (sentence, expected) => {
    expect(sentence).toBe(expected);
  });
});
