/** What one kind of surface adds to the physical material's text. */
export interface SurfaceText {
  readonly vertexPars?: string;
  /** After `transformed` is known. */
  readonly vertexMain?: string;
  readonly pars?: string;
  /** Once colour and normal are known, before any light: may change both. */
  readonly setup?: string;
  /** What one lamp's light does. */
  readonly direct: string;
  /** What the mirror direction sees of the fill: blurred as a rough surface does, or its boxes themselves. */
  readonly mirrors?: 'blurred' | 'boxes';
}
