/** XMP (ISO 16684-1): the description, the mark of a rendered image and the state of the pictures. */
import type { Holds, Metadata, State } from './types';

/**
 * IPTC NewsCodes, digital source type: "Media created purely by an algorithm not based on any sampled
 * training data, e.g. an image created by software using a mathematical formula"
 * (cv.iptc.org/newscodes/digitalsourcetype). What the metadata standard asks of a picture no camera took.
 */
export const RENDERED = 'http://cv.iptc.org/newscodes/digitalsourcetype/algorithmicMedia';

/** A namespace of our own, which nobody else can have chosen. */
export const NAMESPACE = 'urn:uuid:8b0e2a52-6c1d-4f0b-9d57-2f6f3a1c7e90#';

const ESCAPES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
};

/** What XML 1.0 lets no document hold, escaped or not. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is taken out
const FORBIDDEN = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g;

const escaped = (text: string): string =>
  text.replace(FORBIDDEN, '').replace(/[&<>"]/g, (character) => ESCAPES[character] ?? character);

const stateElements = ({ holds, packed }: State): string =>
  `<standpoint:Holds>${holds}</standpoint:Holds><standpoint:State>${packed}</standpoint:State>`;

/** A packet as it lies in PNG, JPEG and WebP alike. */
export function xmpPacket({ description, state }: Metadata): string {
  return `<?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/">
<rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:Iptc4xmpExt="http://iptc.org/std/Iptc4xmpExt/2008-02-29/" xmlns:standpoint="${NAMESPACE}">
<dc:description><rdf:Alt><rdf:li xml:lang="x-default">${escaped(description)}</rdf:li></rdf:Alt></dc:description>
<Iptc4xmpExt:DigitalSourceType>${RENDERED}</Iptc4xmpExt:DigitalSourceType>
${state ? stateElements(state) : ''}
</rdf:Description>
</rdf:RDF>
</x:xmpmeta>
<?xpacket end="r"?>`;
}

/** The value of a property of our namespace, written as an element or as an attribute. */
function property(packet: string, prefix: string, name: string): string | undefined {
  const pattern = new RegExp(
    `<${prefix}:${name}>\\s*([\\w-]+)\\s*</${prefix}:${name}>|\\b${prefix}:${name}=["']([\\w-]+)["']`,
  );
  const [, inElement, inAttribute] = pattern.exec(packet) ?? [];
  return inElement ?? inAttribute;
}

const isHolds = (text: string | undefined): text is Holds =>
  text === 'pictures' || text === 'session';

/** The state in a packet, whichever program wrote the packet anew since; null when it has none. */
export function stateInPacket(packet: string): State | null {
  const bound = new RegExp(`xmlns:([A-Za-z_][\\w-]*)=["']${NAMESPACE}["']`).exec(packet);
  const prefix = bound?.[1];
  if (prefix === undefined) return null;
  const packed = property(packet, prefix, 'State');
  const holds = property(packet, prefix, 'Holds');
  return packed !== undefined && isHolds(holds) ? { holds, packed } : null;
}
