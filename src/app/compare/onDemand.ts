/** What the first pictures do not need. */
import { lazy } from 'react';
import { fetchControls } from '../controls/onDemand';
import { fetchHead } from '../headOnDemand';

const loadKept = () => import('../kept/Kept');
const loadLengths = () => import('./over/Lengths');
const loadLengthsTable = () => import('./LengthsTable');
const loadOutline = () => import('./over/Outline');
const loadStretch = () => import('./over/Stretch');
const loadPeople = () => import('../people/People');
const loadPictureMore = () => import('./PictureMore');
const loadQuestions = () => import('./Questions');
const loadReadingsTable = () => import('./ReadingsTable');
const loadStillSheet = () => import('../stills/StillSheet');
const loadSurroundings = () => import('./Surroundings');
const loadTypeStandpoint = () => import('./TypeStandpoint');

export const Kept = lazy(loadKept);
export const Lengths = lazy(loadLengths);
export const LengthsTable = lazy(loadLengthsTable);
export const Outline = lazy(loadOutline);
export const Stretch = lazy(loadStretch);
export const People = lazy(loadPeople);
export const PictureMore = lazy(loadPictureMore);
export const Questions = lazy(loadQuestions);
export const ReadingsTable = lazy(loadReadingsTable);
export const StillSheet = lazy(loadStillSheet);
export const Surroundings = lazy(loadSurroundings);
export const TypeStandpoint = lazy(loadTypeStandpoint);

/** Once the pictures hang, the rest is fetched before it is asked for. A failure shows when it is. */
export function fetchTheRest(): void {
  Promise.all([
    fetchControls(),
    fetchHead(),
    loadKept(),
    loadLengths(),
    loadLengthsTable(),
    loadOutline(),
    loadStretch(),
    loadPeople(),
    loadPictureMore(),
    loadQuestions(),
    loadStillSheet(),
    loadSurroundings(),
    loadTypeStandpoint(),
  ]).catch(() => undefined);
}
