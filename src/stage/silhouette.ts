import {
  NoColorSpace,
  type Scene,
  UnsignedByteType,
  type WebGLRenderer,
  WebGLRenderTarget,
} from 'three';
import type { Camera } from '../optics/types';
import type { DepthRange } from './depthRange';
import { drawLook } from './looks';
import type { Materials } from './materials';
import { aim, bareCamera } from './projection';

/** Where the sitter is in a picture: 255 inside, 0 outside, between at the edge; rows top down. */
export interface Silhouette {
  readonly width: number;
  readonly height: number;
  readonly mask: Uint8Array;
}

const MULTISAMPLES = 4;

/** Draws the sitter, hair and clothes included, as a mask of the given width. */
export function drawSilhouette(
  renderer: WebGLRenderer,
  scene: Scene,
  materials: Materials,
  view: Camera,
  range: DepthRange,
  width: number,
): Silhouette {
  const { left, right, bottom, top } = view.frustum;
  const height = Math.max(1, Math.round((width * (top - bottom)) / (right - left)));
  const target = new WebGLRenderTarget(width, height, {
    type: UnsignedByteType,
    colorSpace: NoColorSpace,
    samples: MULTISAMPLES,
  });
  const pixels = new Uint8Array(width * height * 4);
  try {
    const camera = bareCamera();
    aim(camera, view, range);
    renderer.setRenderTarget(target);
    renderer.setClearColor(0x000000, 1);
    renderer.clear();
    drawLook(renderer, scene, camera, materials, 'mask');
    renderer.readRenderTargetPixels(target, 0, 0, width, height, pixels);
  } finally {
    renderer.setRenderTarget(null);
    target.dispose();
  }
  const mask = new Uint8Array(width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      mask[y * width + x] = pixels[((height - 1 - y) * width + x) * 4] as number;
    }
  }
  return { width, height, mask };
}
