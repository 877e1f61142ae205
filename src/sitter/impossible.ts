/** Dimensions that contradict each other; `dimension` is the one that cannot be met. */
export class ImpossibleDimensions extends Error {
  constructor(
    readonly dimension: string,
    message: string,
  ) {
    super(message);
    this.name = 'ImpossibleDimensions';
  }
}
