/**
 * The one place where a resolved camera becomes matrices. Field of view, film gauge and view offsets
 * of the renderer are never used: crop, shift, tile and jitter are arithmetic on the frustum.
 */
import { Matrix4, Camera as RendererCamera } from 'three';
import type { Camera, Frustum } from '../optics/types';
import type { DepthRange } from './depthRange';

/** Clip-space matrix of a frustum given at unit distance. */
export function projectionMatrix(frustum: Frustum, { near, far }: DepthRange): Matrix4 {
  return new Matrix4().makePerspective(
    frustum.left * near,
    frustum.right * near,
    frustum.top * near,
    frustum.bottom * near,
    near,
    far,
  );
}

/** Sitter's frame to camera axes (x right, y up, z backwards). */
export function viewMatrix(camera: Pick<Camera, 'position' | 'tilt'>): Matrix4 {
  return new Matrix4()
    .makeRotationX(camera.tilt)
    .setPosition(...camera.position)
    .invert();
}

/** Sets a bare renderer camera to stand and look as the picture's camera does. */
export function aim(target: RendererCamera, camera: Camera, range: DepthRange): void {
  target.position.set(...camera.position);
  target.rotation.set(camera.tilt, 0, 0);
  target.updateMatrixWorld(true);
  target.projectionMatrix.copy(projectionMatrix(camera.frustum, range));
  target.projectionMatrixInverse.copy(target.projectionMatrix).invert();
}

/** A renderer camera without a lens of its own: `aim` gives it its matrices. */
export const bareCamera = (): RendererCamera => new RendererCamera();
