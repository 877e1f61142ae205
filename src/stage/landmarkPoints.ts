/** The test view's squares on the landmarks. */
import { BufferAttribute, BufferGeometry, Color, Points, PointsMaterial } from 'three';
import type { LandmarkName, Sitter } from '../sitter/types';
import { landmarkColour } from './landmarkColours';
import { LAYER } from './layers';

/** Side of a landmark's square, buffer pixels. */
export const LANDMARK_SIZE = 5;

/**
 * Squares on the landmarks that stand on one mesh. They index that mesh's own position buffer, so that
 * the very vertices that are shown are drawn.
 */
export function landmarkPoints(
  sitter: Sitter,
  geometries: readonly BufferGeometry[],
  shown: ReadonlySet<LandmarkName>,
): Points<BufferGeometry, PointsMaterial>[] {
  const names = Object.keys(sitter.landmarkVertices) as LandmarkName[];
  return geometries.flatMap((geometry, meshIndex) => {
    const here = names.filter(
      (name) => shown.has(name) && sitter.landmarkVertices[name][0] === meshIndex,
    );
    const position = geometry.getAttribute('position');
    const colours = new Float32Array(position.count * 3);
    for (const name of here) {
      new Color(...landmarkColour(name).map((part) => part / 255))
        .convertSRGBToLinear()
        .toArray(colours, sitter.landmarkVertices[name][1] * 3);
    }
    const points = new BufferGeometry();
    points.setAttribute('position', position);
    points.setAttribute('color', new BufferAttribute(colours, 3));
    points.setIndex(here.map((name) => sitter.landmarkVertices[name][1]));
    const material = new PointsMaterial({
      size: LANDMARK_SIZE,
      sizeAttenuation: false,
      vertexColors: true,
      depthTest: false,
      toneMapped: false,
    });
    const object = new Points(points, material);
    object.layers.set(LAYER.landmarks);
    object.frustumCulled = false;
    return here.length > 0 ? [object] : [];
  });
}
