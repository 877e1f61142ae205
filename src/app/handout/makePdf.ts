/** The pages on the screen -> a PDF, with their pictures rendered again at the size of the print. */
import { paperSize } from '../../handout/paper';
import { readPage } from '../../handout/pdf/readPage';
import type { ImageMark } from '../../handout/pdf/types';
import { type Pdf, writePdf } from '../../handout/pdf/writePdf';
import { requestOf } from './Photograph';
import { DOTS_PER_INCH, printedPhotograph } from './photographs';
import { type ToPaper, wholePages } from './whole';

const POINTS_PER_INCH = 72;

const bytesOf = async (blob: Blob): Promise<Uint8Array> => new Uint8Array(await blob.arrayBuffer());

/** @throws AbortError when the signal is raised. */
export async function makePdf({ session, darkroom, signal, onProgress }: ToPaper): Promise<Pdf> {
  await document.fonts.ready;
  const { handout, title } = session;
  const size = paperSize(handout.paper, handout.orientation);
  const pages = await wholePages(signal);
  const imageFor = async ({ element, width }: ImageMark): Promise<Uint8Array> => {
    const request = requestOf(element);
    if (!request) return bytesOf(await (await fetch(element.src)).blob());
    const pixels = (width / POINTS_PER_INCH) * DOTS_PER_INCH;
    return bytesOf(await printedPhotograph(darkroom, request, pixels, signal));
  };
  return writePdf({
    pages: pages.map((page) => readPage(page, size)),
    title,
    author: handout.author.name,
    language: document.documentElement.lang || 'en',
    imageFor,
    signal,
    onProgress,
  });
}
