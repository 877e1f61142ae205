import { readSculpture } from '../models/node';
import { buildSitter } from '../sitter/build';
import { sculptures } from '../sitter/compose';
import { type Sitter, UPRIGHT } from '../sitter/types';
import type { Request } from './request';

/** The sitter asked for, built from its sculpture. @throws ImpossibleDimensions */
export async function sitterOf({ sitter, changes, turn, nod }: Request): Promise<Sitter> {
  const sculpture = await sculptures(readSculpture)(sitter, sitter.looks);
  return buildSitter(sculpture, sitter, changes, { ...UPRIGHT, headTurn: turn, headNod: nod });
}
