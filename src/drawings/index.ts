/** Drawings made from the session: the rail. */
// The tracing itself is fetched apart, from ./profile/outline: the first picture does not wait for it.

export type { ProfileOutline } from './profile/outline';
export { Rail, type RailProps } from './rail/Rail';
export { RailStill } from './rail/RailStill';
export { type FrameSpan, frameAtEyePlane } from './rail/sight';
export type { FocusMark, RailContent, RailPicture, RailRoom } from './rail/types';
export type { ScaleKind } from './scale';
