import { readFile } from 'node:fs/promises';
import { buildSitter, loadSculpture } from '../sitter/build';
import { type Sitter, UPRIGHT } from '../sitter/types';
import type { Request } from './request';

/** The sitter asked for, built from its sculpture. @throws ImpossibleDimensions */
export async function sitterOf({ sitter, changes, turn, nod }: Request): Promise<Sitter> {
  const file = new URL(`../../models/sculpture/${sitter.sculpture}.glb`, import.meta.url);
  const sculpture = await loadSculpture(await readFile(file));
  return buildSitter(sculpture, sitter, changes, { ...UPRIGHT, headTurn: turn, headNod: nod });
}
