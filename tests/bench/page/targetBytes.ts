/**
 * Counts the bytes of all textures and renderbuffers of the page, as asked of WebGL; imported before any
 * context is made. Mipmaps and buffers of vertices are left out: no still makes any.
 */

const PER_PIXEL: Readonly<Record<string, number>> = {
  RGBA8: 4,
  SRGB8_ALPHA8: 4,
  RGBA16F: 8,
  RGBA32F: 16,
  RG16F: 4,
  DEPTH_COMPONENT16: 2,
  DEPTH_COMPONENT24: 4,
  DEPTH_COMPONENT32F: 4,
  DEPTH24_STENCIL8: 4,
};

const held = new Map<object, number>();
let total = 0;
let most = 0;

function hold(gl: WebGL2RenderingContext, what: object, format: number, area: number): void {
  const name = Object.keys(PER_PIXEL).find((key) => gl[key as 'RGBA8'] === format);
  // One that is not listed counts as the largest.
  const bytes = area * (name ? (PER_PIXEL[name] as number) : 16);
  total += bytes - (held.get(what) ?? 0);
  held.set(what, bytes);
  most = Math.max(most, total);
}

function release(what: object | null): void {
  if (!what) return;
  total -= held.get(what) ?? 0;
  held.delete(what);
}

type Arguments = readonly never[];
const GL = WebGL2RenderingContext.prototype as unknown as Record<
  string,
  (this: WebGL2RenderingContext, ...args: Arguments) => unknown
>;

/** Does something besides each call of a method. */
function besides(
  method: string,
  note: (gl: WebGL2RenderingContext, ...args: readonly number[]) => void,
): void {
  const own = GL[method];
  if (!own) throw new Error(`WebGL has no ${method}`);
  GL[method] = function (...args) {
    note(this, ...args);
    return Reflect.apply(own, this, args);
  };
}

const texture = (gl: WebGL2RenderingContext) => gl.getParameter(gl.TEXTURE_BINDING_2D) as object;
const buffer = (gl: WebGL2RenderingContext) => gl.getParameter(gl.RENDERBUFFER_BINDING) as object;

besides('texStorage2D', (gl, target, _levels, format, width, height) => {
  if (target === gl.TEXTURE_2D) hold(gl, texture(gl), format ?? 0, (width ?? 0) * (height ?? 0));
});
besides('texImage2D', (gl, target, level, format, width, height, border) => {
  if (target === gl.TEXTURE_2D && level === 0 && border === 0)
    hold(gl, texture(gl), format ?? 0, (width ?? 0) * (height ?? 0));
});
besides('renderbufferStorage', (gl, _target, format, width, height) =>
  hold(gl, buffer(gl), format ?? 0, (width ?? 0) * (height ?? 0)),
);
besides('renderbufferStorageMultisample', (gl, _target, samples, format, width, height) =>
  hold(gl, buffer(gl), format ?? 0, (width ?? 0) * (height ?? 0) * Math.max(1, samples ?? 1)),
);
for (const method of ['deleteTexture', 'deleteRenderbuffer'])
  besides(method, (_gl, what) => release(what as unknown as object | null));

/** The most bytes held at once since the last call, and those held now. */
export function targetBytes(): { readonly most: number; readonly now: number } {
  const read = { most, now: total };
  most = total;
  return read;
}
