import { useEffect, useMemo } from 'react';
import { BufferAttribute, BufferGeometry, Color, Points, PointsMaterial } from 'three';
import type { LandmarkName, Sitter, SitterMesh } from '../sitter/types';
import { landmarkColour } from './landmarkColours';
import { LAYER } from './layers';
import type { Materials } from './materials';

/** A mesh's own arrays as a geometry; nothing is copied. */
export function meshGeometry(mesh: SitterMesh): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(mesh.positions, 3));
  geometry.setAttribute('normal', new BufferAttribute(mesh.normals, 3));
  geometry.setAttribute('color', new BufferAttribute(mesh.colours, 3, true));
  geometry.setIndex(new BufferAttribute(mesh.indices, 1));
  return geometry;
}

/** Ribbons of single hairs: too thin for a shadow map, which would draw them as specks. */
export const isSingleHairs = ({ substance, name }: SitterMesh): boolean =>
  substance === 'brows' || name.endsWith('-locks');

/**
 * Squares on the landmarks that stand on one mesh. They index that mesh's own position buffer, so that
 * the very vertices that are shown are drawn.
 */
function landmarkPoints(
  sitter: Sitter,
  geometries: readonly BufferGeometry[],
  shown: ReadonlySet<LandmarkName>,
): Points[] {
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

/** Side of a landmark's square in the test view, buffer pixels. */
export const LANDMARK_SIZE = 5;

export interface SitterSceneProps {
  readonly sitter: Sitter;
  readonly materials: Materials;
  /** Landmarks drawn in the test view; none are built when there are none. */
  readonly landmarks: readonly LandmarkName[];
}

export function SitterScene({ sitter, materials, landmarks }: SitterSceneProps) {
  const geometries = useMemo(() => sitter.meshes.map(meshGeometry), [sitter]);
  useEffect(
    () => () => {
      for (const geometry of geometries) geometry.dispose();
    },
    [geometries],
  );
  const points = useMemo(
    () => (landmarks.length > 0 ? landmarkPoints(sitter, geometries, new Set(landmarks)) : []),
    [sitter, geometries, landmarks],
  );
  return (
    <>
      {sitter.meshes.map((mesh, index) => (
        <mesh
          key={mesh.name}
          geometry={geometries[index] as BufferGeometry}
          material={materials.of[mesh.substance]}
          layers={LAYER.sitter}
          castShadow={!isSingleHairs(mesh)}
          receiveShadow
          frustumCulled={false}
        />
      ))}
      {points.map((object) => (
        <primitive key={object.uuid} object={object} />
      ))}
    </>
  );
}
