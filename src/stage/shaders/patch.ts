/** Changes to the renderer's own shader text, which fail aloud when a new release moves an anchor. */
export interface ShaderText {
  vertexShader: string;
  fragmentShader: string;
}

/** @throws Error when the anchor does not stand in the source exactly once. */
export function replaceOnce(source: string, anchor: string, text: string): string {
  const parts = source.split(anchor);
  if (parts.length !== 2) {
    throw new Error(`shader anchor found ${parts.length - 1} times, expected once: ${anchor}`);
  }
  return parts.join(text);
}

export const insertAfter = (source: string, anchor: string, text: string): string =>
  replaceOnce(source, anchor, `${anchor}\n${text}`);
