/** Milliseconds of drawing after which the page gets its turn: input, painting, a press on cancel. */
const TURN = 100;

/** A turn of the page's own event loop. No timer: those of a page in the background come once a second. */
const turn = (): Promise<void> =>
  new Promise((resolve) => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = () => {
      port1.close();
      resolve();
    };
    port2.postMessage(null);
  });

/** Long work in pieces short enough for the page to answer between them, whatever the machine. */
export class Pace {
  /** How much to do before the next turn. */
  piece = 1;
  private begun = performance.now();

  /** Marks the beginning of a piece. */
  begin(): void {
    this.begun = performance.now();
  }

  /** A piece of so much is done, the graphics processor's part included. */
  async rest(done: number): Promise<void> {
    const took = Math.max(1, performance.now() - this.begun);
    this.piece = Math.max(1, Math.min(2 * this.piece, Math.floor((done * TURN) / took)));
    await turn();
  }
}
