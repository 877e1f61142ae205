/** What the first pictures do not need. */
import { lazy } from 'react';
import { fetchControls } from '../controls/onDemand';
import { fetchHead } from '../headOnDemand';

const loadStillSheet = () => import('./StillSheet');
const loadSurroundings = () => import('./Surroundings');
const loadTypeStandpoint = () => import('./TypeStandpoint');

export const StillSheet = lazy(loadStillSheet);
export const Surroundings = lazy(loadSurroundings);
export const TypeStandpoint = lazy(loadTypeStandpoint);

/** Once the pictures hang, the rest is fetched before it is asked for. A failure shows when it is. */
export function fetchTheRest(): void {
  Promise.all([
    fetchControls(),
    fetchHead(),
    loadStillSheet(),
    loadSurroundings(),
    loadTypeStandpoint(),
  ]).catch(() => undefined);
}
