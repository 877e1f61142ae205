/** The parts of controls that are seen only once a slip is opened; a slip waits for them. */
import { lazy } from 'react';
import type GenericChoiceList from './ChoiceList';

const loadChoiceList = () => import('./ChoiceList');
const loadEntry = () => import('./Entry');

// `lazy` loses the type parameter of a generic component.
export const ChoiceList = lazy(loadChoiceList) as unknown as typeof GenericChoiceList;
export const Entry = lazy(loadEntry);

export const fetchControls = () => Promise.all([loadChoiceList(), loadEntry()]);
