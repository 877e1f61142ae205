/** The plain side: a WebGLRenderer that draws each picture with one call, and nothing around it. */
import {
  Color,
  NeutralToneMapping,
  PCFShadowMap,
  WebGLRenderer,
  type WebGLRenderTarget,
} from 'three';
import type { Camera } from '../../../src/optics/types';
import { runOf } from '../../../src/session/kit';
import type { StagePicture } from '../../../src/stage';
import { alone, companyOf } from '../../../src/stage/company';
import { depthRange } from '../../../src/stage/depthRange';
import { detailFor, pixelsPerMetre } from '../../../src/stage/detail';
import { hallBounds } from '../../../src/stage/floor';
import { lampUniforms, setFill } from '../../../src/stage/lampUniforms';
import { createMaterials } from '../../../src/stage/materials';
import { EXPOSURE } from '../../../src/stage/outputPass';
import { aim, bareCamera } from '../../../src/stage/projection';
import { ShadowMaps } from '../../../src/stage/shadows';
import { bareScene } from './bareScene';
import { finish } from './pixels';
import { CANVAS, type Subject } from './subject';
import { stockWardrobe } from './wardrobe';

export interface BareSide {
  readonly renderer: WebGLRenderer;
  readonly draw: (pictures: readonly StagePicture[]) => void;
  /** Draws one camera's picture over a whole target. */
  readonly drawInto: (target: WebGLRenderTarget, camera: Camera) => void;
  /** Whose shaders the surfaces have. */
  readonly wear: (whose: 'studio' | 'stock') => void;
}

function makeRenderer(canvas: HTMLCanvasElement): WebGLRenderer {
  const renderer = new WebGLRenderer({
    canvas,
    alpha: true,
    antialias: true,
    preserveDrawingBuffer: true,
  });
  renderer.setSize(CANVAS.width, CANVAS.height);
  renderer.setClearColor(0x000000, 0);
  renderer.shadowMap.enabled = true;
  renderer.shadowMap.type = PCFShadowMap;
  renderer.shadowMap.autoUpdate = false;
  renderer.toneMapping = NeutralToneMapping;
  renderer.toneMappingExposure = EXPOSURE;
  return renderer;
}

export function bareSide(
  canvas: HTMLCanvasElement,
  { sitter, session, states }: Subject,
): BareSide {
  const renderer = makeRenderer(canvas);
  const room = runOf(session.room);
  const light = session.light;
  const company = companyOf(alone(sitter));
  const { scene, shadowed, wear, setDetail } = bareScene(company, light, room);
  const uniforms = lampUniforms();
  setFill(uniforms, light.fill);
  const studio = createMaterials(uniforms, new Color());
  const wardrobes = { studio, stock: stockWardrobe(renderer, studio, light.fill) };
  wear(studio);
  const [first] = states[0];
  if (!first) throw new Error('no picture');
  const detail = detailFor(pixelsPerMetre(first.camera, first.rect.height), null);
  setDetail(detail);
  new ShadowMaps(uniforms).use(renderer, scene, shadowed, company, detail);

  const hall = hallBounds(company.floor, room);
  const ranges = new Map(
    states
      .flat()
      .map((picture) => [picture.camera, depthRange(picture.camera, company.bounds, hall)]),
  );
  const camera = bareCamera();
  const take = (view: Camera) => {
    const range = ranges.get(view);
    if (!range) throw new Error('not a camera of the subject');
    aim(camera, view, range);
  };
  const gl = renderer.getContext() as WebGL2RenderingContext;
  return {
    renderer,
    draw(pictures) {
      renderer.setScissorTest(true);
      for (const { camera: view, rect } of pictures) {
        take(view);
        renderer.setViewport(rect.x, rect.y, rect.width, rect.height);
        renderer.setScissor(rect.x, rect.y, rect.width, rect.height);
        renderer.render(scene, camera);
        // Hair covers its samples by alpha, which the canvas must not keep.
        gl.colorMask(false, false, false, true);
        gl.clearColor(0, 0, 0, 1);
        gl.clear(gl.COLOR_BUFFER_BIT);
        gl.clearColor(0, 0, 0, 0);
        gl.colorMask(true, true, true, true);
      }
      finish(gl);
    },
    drawInto(target, view) {
      take(view);
      renderer.setRenderTarget(target);
      renderer.render(scene, camera);
      renderer.setRenderTarget(null);
    },
    wear: (whose) => wear(wardrobes[whose]),
  };
}
