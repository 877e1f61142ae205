/** Draws the scene once, through one camera, into whatever target and viewport are set. */
import type { Camera, Scene, WebGLRenderer } from 'three';
import { LAYER } from './layers';
import type { Materials } from './materials';

/**
 * photo: the sitter in the room; clay: the sitter without colours; mask: the sitter white on black;
 * landmarks: the sitter black and each landmark's vertex as a small coloured square, for tests.
 */
export type Look = 'photo' | 'clay' | 'landmarks' | 'mask';

/** Looks that show light, and therefore need shadows. */
export const isLit = (look: Look): boolean => look === 'photo' || look === 'clay';

interface Pass {
  readonly layers: readonly number[];
  readonly override: keyof Pick<Materials, 'black' | 'white' | 'clay' | 'clayHair'> | null;
}

const PASSES: Readonly<Record<Look, readonly Pass[]>> = {
  photo: [{ layers: [LAYER.room, LAYER.sitter, LAYER.hair, LAYER.glass], override: null }],
  clay: [
    { layers: [LAYER.room], override: null },
    { layers: [LAYER.sitter], override: 'clay' },
    { layers: [LAYER.hair], override: 'clayHair' },
  ],
  mask: [{ layers: [LAYER.sitter, LAYER.hair], override: 'white' }],
  landmarks: [
    { layers: [LAYER.sitter, LAYER.hair], override: 'black' },
    { layers: [LAYER.landmarks], override: null },
  ],
};

export function drawLook(
  renderer: WebGLRenderer,
  scene: Scene,
  camera: Camera,
  materials: Materials,
  look: Look,
): void {
  for (const pass of PASSES[look]) {
    camera.layers.disableAll();
    for (const layer of pass.layers) camera.layers.enable(layer);
    scene.overrideMaterial = pass.override ? materials[pass.override] : null;
    renderer.render(scene, camera);
  }
  scene.overrideMaterial = null;
}
