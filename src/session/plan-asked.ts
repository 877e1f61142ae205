import type { Asked } from '../plan/types';

/**
 * What is asked of every picture until the photographer says otherwise. By eye, no source: shares at which a
 * face begins to look drawn from near, and what is comfortable between a lens and a nose, metres.
 */
export const USUAL_ASKED: Asked = {
  noseGain: 0.08,
  rowDifference: 0.1,
  stretch: 0.1,
  personal: null,
  clearance: 0.3,
  sharp: 'eyes',
  fNumber: [1.4, 16],
  softness: null,
  backdropMargin: 0.05,
};
