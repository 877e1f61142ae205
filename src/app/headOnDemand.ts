/** What is fetched only when it is asked for in the running head. */
import { lazy } from 'react';

const loadSessionActs = () => import('./SessionActs');

const loadPlan = () => import('./plan/Plan');

const loadHandout = () => import('./handout/Handout');

const loadPresent = () => import('./present/Present');

export const DropAnywhere = lazy(() => import('./open/DropAnywhere'));
export const Handout = lazy(loadHandout);
export const Plan = lazy(loadPlan);
export const Present = lazy(loadPresent);
export const SessionActs = lazy(loadSessionActs);
export const Sessions = lazy(() => import('./library/Sessions'));
export const Keeping = lazy(() => import('./library/Keeping'));
export const linkCodec = () => import('../session/link');

export const fetchHead = () =>
  Promise.all([loadSessionActs(), linkCodec(), loadPlan(), loadPresent()]);
