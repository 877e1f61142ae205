/** A drawing of the page as a file that stands by itself: its styles written into it, on white. */

/** What decides how shapes and texts look. */
const STYLES = [
  'fill',
  'fill-opacity',
  'stroke',
  'stroke-width',
  'stroke-dasharray',
  'stroke-linecap',
  'stroke-linejoin',
  'paint-order',
  'font-family',
  'font-size',
  'font-weight',
  'font-variant-numeric',
  'text-anchor',
] as const;

const SVG = 'http://www.w3.org/2000/svg';

/** Writes the computed styles of an element and all within it into attributes of its copy. */
function inline(from: Element, to: Element): void {
  const style = getComputedStyle(from);
  to.removeAttribute('class');
  to.setAttribute(
    'style',
    STYLES.map((name) => `${name}:${style.getPropertyValue(name)}`).join(';'),
  );
  for (const [i, child] of [...from.children].entries()) inline(child, to.children[i] as Element);
}

/**
 * @param holder the element whose style sheet rules hold for the drawing within it
 * @returns SVG text; dark ink on white, whatever the screen's scheme
 */
export function svgFile(holder: Element): string {
  const paper = holder.cloneNode(true) as HTMLElement;
  paper.classList.add('drawn-alone');
  paper.style.cssText = 'position:fixed;left:-100000px;--paper:#fff';
  document.body.append(paper);
  try {
    const shown = paper.querySelector('svg');
    if (!shown) throw new Error('there is no drawing');
    const copy = shown.cloneNode(true) as SVGSVGElement;
    inline(shown, copy);
    const { width, height } = shown.viewBox.baseVal;
    copy.setAttribute('xmlns', SVG);
    copy.setAttribute('width', String(width));
    copy.setAttribute('height', String(height));
    const ground = document.createElementNS(SVG, 'rect');
    ground.setAttribute('width', String(width));
    ground.setAttribute('height', String(height));
    ground.setAttribute('fill', '#fff');
    const description = document.createElementNS(SVG, 'desc');
    description.textContent = shown.getAttribute('aria-label');
    copy.prepend(description, ground);
    return `<?xml version="1.0" encoding="UTF-8"?>\n${new XMLSerializer().serializeToString(copy)}\n`;
  } finally {
    paper.remove();
  }
}
