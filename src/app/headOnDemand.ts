/** What the running head needs only when it is pressed. */
import { lazy } from 'react';

const loadSessionActs = () => import('./SessionActs');

export const SessionActs = lazy(loadSessionActs);
export const linkCodec = () => import('../session/link');

export const fetchHead = () => Promise.all([loadSessionActs(), linkCodec()]);
