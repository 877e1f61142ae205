/** What of the handout is seen only once it is opened. */
import { lazy } from 'react';

export const Kept = lazy(() => import('../kept/Kept'));
