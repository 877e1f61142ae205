/** Pages as a PDF: text as text, vectors as vectors, tagged, with bookmarks. */
import PDFDocument from 'pdfkit';
import { toBlob } from 'pdfkit/output';
import { type Faces, facesFor } from './faces';
import type { Block, ImageMark, Mark, PaperPage, PathMark, TextMark } from './types';

export interface PdfRequest {
  readonly pages: readonly PaperPage[];
  readonly title: string;
  readonly author: string;
  /** BCP 47. */
  readonly language: string;
  /** The picture of an image at the size of the print, as JPEG or PNG. */
  readonly imageFor: (mark: ImageMark) => Promise<Uint8Array>;
  readonly signal: AbortSignal;
  /** Share of the images made, 0..1. */
  readonly onProgress: (share: number) => void;
}

export interface Pdf {
  readonly blob: Blob;
  /** Letters that no face at hand holds; they print as boxes. */
  readonly missing: readonly string[];
}

function marksOf(block: Block): Mark[] {
  return block.parts.flatMap((part) => ('tag' in part ? marksOf(part) : [part]));
}

class Writer {
  constructor(
    private readonly doc: PDFKit.PDFDocument,
    private readonly faces: Faces,
    private readonly images: ReadonlyMap<ImageMark, Uint8Array>,
  ) {}

  /** Draws a block and gives the element of the document's structure that stands for it. */
  block({ tag, alt, parts }: Block): PDFKit.PDFStructureElement {
    const { doc } = this;
    const element = doc.struct(tag, alt === undefined ? {} : { alt });
    let marks: Mark[] = [];
    const flush = () => {
      if (marks.length === 0) return;
      const content = doc.markStructureContent(tag);
      for (const mark of marks) this.mark(mark);
      doc.endMarkedContent();
      element.add(content);
      marks = [];
    };
    for (const part of parts) {
      if (!('tag' in part)) {
        marks.push(part);
        continue;
      }
      flush();
      if (part.tag === 'Artifact') this.artifact(part);
      else element.add(this.block(part));
    }
    flush();
    element.end();
    return element;
  }

  /** What is seen but says nothing: rules and grounds. */
  private artifact(block: Block): void {
    this.doc.markContent('Artifact', { type: 'Layout' });
    for (const mark of marksOf(block)) this.mark(mark);
    this.doc.endMarkedContent();
  }

  private mark(mark: Mark): void {
    const { doc } = this;
    doc.save();
    if (mark.kind === 'text') this.text(mark);
    else if (mark.kind === 'path') this.path(mark);
    else {
      const image = this.images.get(mark);
      const { x, y, width, height } = mark;
      if (image) doc.image(image.buffer as ArrayBuffer, x, y, { width, height });
    }
    doc.restore();
  }

  private text({ text, x, baseline, size, bold, width, ink, matrix }: TextMark): void {
    const { doc } = this;
    if (matrix) doc.transform(...matrix);
    doc.fillColor(ink.colour).fillOpacity(ink.opacity).fontSize(size);
    const runs = this.faces.runs(text, bold).map((run) => ({
      ...run,
      width: doc.font(run.face.name).widthOfString(run.text, FEATURES),
    }));
    const whole = runs.reduce((sum, run) => sum + run.width, 0);
    const fit = whole > 0 ? width / whole : 1;
    let at = x;
    for (const run of runs) {
      const options = {
        ...FEATURES,
        lineBreak: false,
        baseline: 'alphabetic',
        // As wide as the browser has set it, to the last tenth of a point. The types do not know it yet.
        horizontalScaling: 100 * fit,
      } as PDFKit.Mixins.TextOptions;
      doc.font(run.face.name).text(run.text, at, baseline, options);
      at += run.width * fit;
    }
  }

  private path(mark: PathMark): void {
    const { doc } = this;
    for (const { d, matrix } of mark.clips) {
      // A clip stays while the coordinates go back.
      doc
        .transform(...matrix)
        .path(d)
        .clip();
      doc.transform(...inverse(matrix));
    }
    doc.transform(...mark.matrix);
    const { fill, stroke } = mark;
    if (fill) doc.path(mark.d).fillOpacity(fill.opacity).fill(fill.colour);
    if (!stroke) return;
    doc.path(mark.d).lineWidth(stroke.width).lineCap(mark.cap).lineJoin(mark.join);
    if (stroke.dash.length > 0) {
      const [length = 1, space = length] = stroke.dash;
      // The types know one length alone; the library takes a list too.
      doc.dash((stroke.dash.length > 2 ? [...stroke.dash] : length) as number, { space });
    }
    doc.strokeOpacity(stroke.opacity).stroke(stroke.colour);
  }
}

/** Lining figures of equal width, as the page has them. */
const FEATURES = {
  features: ['kern', 'liga', 'calt', 'lnum', 'tnum'] as PDFKit.Mixins.OpenTypeFeatures[],
};

const inverse = ([a, b, c, d, e, f]: PathMark['matrix']): PathMark['matrix'] => {
  const det = a * d - b * c;
  return [d / det, -b / det, -c / det, a / det, (c * f - d * e) / det, (b * e - a * f) / det];
};

/** @throws AbortError when the signal is raised; nothing remains then. */
export async function writePdf(request: PdfRequest): Promise<Pdf> {
  const { pages, signal, imageFor, onProgress } = request;
  const marks = pages.flatMap(({ content }) => marksOf(content));
  const wanted = marks.filter((mark) => mark.kind === 'image');
  const images = new Map<ImageMark, Uint8Array>();
  for (const mark of wanted) {
    signal.throwIfAborted();
    images.set(mark, await imageFor(mark));
    onProgress(images.size / wanted.length);
  }
  const faces = await facesFor(marks.filter((mark) => mark.kind === 'text'));
  signal.throwIfAborted();
  const doc = new PDFDocument({
    autoFirstPage: false,
    // Without a face to begin with: the document would fetch one of its own.
    font: null as unknown as string,
    pdfVersion: '1.7',
    tagged: true,
    lang: request.language,
    displayTitle: true,
    info: { Title: request.title, Author: request.author, Creator: 'Standpoint' },
  });
  const blob = toBlob(doc);
  for (const { name, bytes } of faces.faces)
    doc.registerFont(name, bytes as unknown as ArrayBuffer);
  const writer = new Writer(doc, faces, images);
  const root = doc.struct('Document');
  doc.addStructure(root);
  for (const { width, height, title, content } of pages) {
    doc.addPage({ size: [width, height], margin: 0 });
    doc.outline.addItem(title);
    root.add(writer.block(content));
    // The page that is looked at has its turns between those that are written.
    await new Promise((resolve) => setTimeout(resolve));
    signal.throwIfAborted();
  }
  root.end();
  doc.end();
  return { blob: await blob, missing: faces.missing };
}
