/** Marks after a value, kept on its line: a line may else break between a button and what follows it. */
const WORD_JOINER = '\u2060';
export const COMMA = `${WORD_JOINER},`;
export const STOP = `${WORD_JOINER}.`;
export const SEMICOLON = `${WORD_JOINER};`;

/** A reason as the end of a sentence: with one full stop, whether it brought its own or not. */
export const ended = (why: string): string => `${why.replace(/[.\s]+$/, '')}.`;
