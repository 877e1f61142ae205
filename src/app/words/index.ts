import { en } from './en';

/** Every word on the screen. A second language is one more file of this type (see DEVELOPERS.md). */
export type Words = typeof en;
export const words: Words = en;
