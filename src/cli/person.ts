import { dimensionsOf } from '../models/framing';
import { landmarksFor } from '../sitter/landmarks';
import type { Sitter } from '../sitter/types';
import type { Request } from './request';

export async function sitterOf(request: Request): Promise<Sitter> {
  const dimensions = dimensionsOf(request.sitter, request.changes);
  return {
    dimensions,
    landmarks: landmarksFor(dimensions),
    meshes: [],
    landmarkVertices: {} as never,
  };
}
