/** The lit scene and its pictures: everything a page needs of the stage. */
export type { PlacedSitter } from './company';
export { landmarkColour } from './landmarkColours';
export type { Look } from './looks';
export type { Rect } from './rects';
export { Stage, type StageProps, type Unavailable } from './Stage';
export type { StageHandle } from './StageScene';
export type { Silhouette } from './silhouette';
export { APERTURE_SAMPLES, SAMPLES, StillInterrupted, type StillOptions } from './stillOptions';
export { type LampSetting, type StudioLight, USUAL_LIGHT } from './studio';
export type { StagePicture } from './wall';
