/** Drawings made from the session: the rail. */
export { type ProfileOutline, profileOutline } from './profile/outline';
export { Rail, type RailProps } from './rail/Rail';
export type { ScaleKind } from './rail/scale';
export { type FrameSpan, frameAtEyePlane } from './rail/sight';
export type { FocusMark, RailContent, RailPicture, RailRoom } from './rail/types';
