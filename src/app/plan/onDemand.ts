/** What of the plan is seen only once it is opened. */
import { lazy } from 'react';

export const Cards = lazy(() => import('./Cards'));
export const GroupPanel = lazy(() => import('./GroupPanel'));
export const KitPanel = lazy(() => import('./KitPanel'));
export const LightStands = lazy(() => import('./LightStands'));
export const People = lazy(() => import('../people/People'));
export const Things = lazy(() => import('./Things'));
export const WantedPictures = lazy(() => import('./WantedPictures'));
