/** The pages through the browser's own printing, with their pictures rendered again at the size of the print. */
import { paperSize } from '../../handout/paper';
import { requestOf } from './Photograph';
import { DOTS_PER_INCH, printedPhotograph } from './photographs';
import { type ToPaper, wholePages } from './whole';

const MM_PER_INCH = 25.4;

/** @throws when a part of a page could not be made; AbortError when the signal is raised. */
export async function printPages({ session, darkroom, signal, onProgress }: ToPaper) {
  const { handout } = session;
  const { width: millimetres } = paperSize(handout.paper, handout.orientation);
  const images = (await wholePages(signal)).flatMap((page) => {
    const whole = page.getBoundingClientRect().width;
    return [...page.querySelectorAll<HTMLImageElement>('.photograph')].flatMap((image) => {
      const request = requestOf(image);
      const share = image.getBoundingClientRect().width / whole;
      const pixels = ((share * millimetres) / MM_PER_INCH) * DOTS_PER_INCH;
      return request ? [{ image, request, pixels, screen: image.src }] : [];
    });
  });
  const urls: string[] = [];
  try {
    for (const { request, pixels } of images) {
      const blob = await printedPhotograph(darkroom, request, pixels, signal);
      urls.push(URL.createObjectURL(blob));
      onProgress(urls.length / images.length);
    }
    for (const [i, { image }] of images.entries()) image.src = urls[i] as string;
    await Promise.all(images.map(({ image }) => image.decode()));
    window.print();
  } finally {
    for (const { image, screen } of images) image.src = screen;
    for (const url of urls) URL.revokeObjectURL(url);
  }
}
