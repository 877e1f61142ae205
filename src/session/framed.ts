import { frameHeightOf } from '../models/framing';
import type { FramingModel, Models } from '../models/types';
import { clamp, LIMITS } from './limits';
import { personDimensions } from './person';
import type { Person } from './types';

/** Usual frame height of a framing for a person, metres, in the legal range. */
export function usualFrameHeight(person: Person, framing: FramingModel, models: Models): number {
  const dimensions = personDimensions(person, models);
  return clamp(frameHeightOf(framing, dimensions).usual, LIMITS.frameHeight);
}
