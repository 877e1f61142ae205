/** Quantities as people type and read them. */
export * from './format';
export * from './parse';
