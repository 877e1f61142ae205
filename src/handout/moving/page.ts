/**
 * A comparison as one HTML file: everything is in it, it asks the net for nothing and may not, and it runs
 * from a disk. Pure.
 */
import { follow } from './follow';
import { STYLE } from './style';
import type { MovingContent, MovingFrame, MovingPicture } from './types';

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

const escaped = (text: string): string =>
  text.replace(/[&<>"']/g, (character) => ESCAPES[character] ?? character);

/** JSON inside an element: it must not be able to end it. */
const embedded = (value: unknown): string => JSON.stringify(value).replaceAll('<', '\\u003c');

/** Only what carries the nonce runs; nothing is fetched but pictures that the page itself holds. */
const policy = (nonce: string): string =>
  `default-src 'none'; img-src data:; font-src data:; style-src 'nonce-${nonce}'; script-src 'nonce-${nonce}'; base-uri 'none'; form-action 'none'`;

const faces = (fonts: MovingContent['fonts']): string =>
  fonts
    .map(
      ({ weight, address }) =>
        `@font-face { font-family: Literata; font-weight: ${weight}; src: url("${escaped(address)}") format("woff2"); }`,
    )
    .join('\n');

const accentRule = ({ accents: { start, moving } }: MovingContent): string =>
  `:root { --start-on-white: ${escaped(start)}; --moving-on-white: ${escaped(moving)}; }`;

function figure(
  { image, alt, title, details }: MovingPicture,
  kind: 'start' | 'moving',
  letter: string,
  { width, height }: MovingContent['size'],
): string {
  const rows = details.map((each) => `<span class="detail">${escaped(each)}</span>`).join('');
  return `<figure class="${kind}"><img src="${escaped(image)}" alt="${escaped(alt)}" width="${width}" height="${height}" decoding="sync">
<figcaption><b>${escaped(letter)}</b><span><strong>${escaped(title)}</strong>${rows}</span></figcaption></figure>`;
}

function readings({ letters, labels, start, rows, frames: [first] }: MovingContent): string {
  const head = (letter: string, kind: string) =>
    `<th scope="col" class="number key-${kind}">${escaped(letter)}</th>`;
  const row = (name: string, i: number) =>
    `<tr class="numbers"><th scope="row">${escaped(name)}</th>${
      start ? `<td class="number">${escaped(start.cells[i] ?? '')}</td>` : ''
    }<td class="number follows">${escaped(first.cells[i] ?? '')}</td></tr>
<tr><td class="says" colspan="${start ? 3 : 2}">${escaped(first.says[i] ?? '')}</td></tr>`;
  return `<table><thead><tr><th scope="col">${escaped(labels.measured)}</th>${
    start ? head(letters.start, 'start') : ''
  }${head(letters.moving, 'moving')}</tr></thead>
<tbody>${rows.map(row).join('\n')}</tbody></table>`;
}

function slider({ labels, frames, ends }: MovingContent): string {
  return `<div class="move">
<p><label for="place">${escaped(labels.slider)}</label><output id="where" for="place" aria-live="off">${escaped(frames[0].place)}</output></p>
<input type="range" id="place" min="0" max="${frames.length - 1}" step="1" value="0" aria-describedby="hint">
<p><small>${escaped(ends[0])}</small><small id="hint">${escaped(labels.hint)}</small><small>${escaped(ends[1])}</small></p>
</div>`;
}

/** @param nonce letters and digits that nobody can know beforehand, new for each page */
export function movingPage(content: MovingContent, nonce: string): string {
  const { language, title, lead, labels, letters, size, start, frames, notes, fonts } = content;
  const [first] = frames;
  const frame = (kind: 'start' | 'moving', picture: MovingPicture) =>
    figure(picture, kind, letters[kind], size);
  return `<!doctype html>
<html lang="${escaped(language)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy(nonce)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<meta name="referrer" content="no-referrer">
<link rel="icon" href="data:,">
<title>${escaped(title)}</title>
<style nonce="${nonce}">${faces(fonts)}${accentRule(content)}${STYLE}</style>
</head>
<body>
<main>
<h1>${escaped(title)}</h1>
<p class="lead">${escaped(lead)}</p>
<noscript><p>${escaped(labels.noScript)}</p></noscript>
<div class="show">
<div class="hung ${size.width > size.height ? 'lying' : 'upright'}">
${start ? frame('start', start) : ''}
${frame('moving', first)}
</div>
${slider(content)}
</div>
<div class="tell">
<output id="changes" for="place">${escaped(first.changes)}</output>
<div class="paper">
${readings(content)}
</div>
</div>
<ul class="notes">${notes.map((note) => `<li>${escaped(note)}</li>`).join('\n')}</ul>
</main>
<script type="application/json" id="frames">${embedded(frames satisfies readonly MovingFrame[])}</script>
<script nonce="${nonce}">(${follow.toString()})();</script>
</body>
</html>
`;
}
