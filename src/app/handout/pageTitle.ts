import type { HandoutPage } from '../../session/handout';
import { page as said } from '../words/page.en';

/** What a page is called, on it and in the list. */
export const pageTitle = ({ kind, words }: HandoutPage): string => words.title ?? said.titles[kind];
