/**
 * The faces a PDF embeds, by the letters they hold: Literata (Latin, Greek, Cyrillic, Vietnamese), Noto Sans
 * for Hebrew, Arabic, Georgian and Armenian. Each file is fetched when a text needs it. SIL Open Font Licence.
 */
import { create, type Font } from 'fontkit';

type Weight = 'regular' | 'bold';

/** Fetched in this order: the first face that has a letter sets it. */
const FILES: readonly Readonly<Record<Weight, () => Promise<{ default: string }>>>[] = [
  {
    regular: () => import('@fontsource/literata/files/literata-latin-400-normal.woff?url'),
    bold: () => import('@fontsource/literata/files/literata-latin-600-normal.woff?url'),
  },
  {
    regular: () => import('@fontsource/literata/files/literata-latin-ext-400-normal.woff?url'),
    bold: () => import('@fontsource/literata/files/literata-latin-ext-600-normal.woff?url'),
  },
  {
    regular: () => import('@fontsource/literata/files/literata-greek-400-normal.woff?url'),
    bold: () => import('@fontsource/literata/files/literata-greek-600-normal.woff?url'),
  },
  {
    regular: () => import('@fontsource/literata/files/literata-greek-ext-400-normal.woff?url'),
    bold: () => import('@fontsource/literata/files/literata-greek-ext-600-normal.woff?url'),
  },
  {
    regular: () => import('@fontsource/literata/files/literata-cyrillic-400-normal.woff?url'),
    bold: () => import('@fontsource/literata/files/literata-cyrillic-600-normal.woff?url'),
  },
  {
    regular: () => import('@fontsource/literata/files/literata-cyrillic-ext-400-normal.woff?url'),
    bold: () => import('@fontsource/literata/files/literata-cyrillic-ext-600-normal.woff?url'),
  },
  {
    regular: () => import('@fontsource/literata/files/literata-vietnamese-400-normal.woff?url'),
    bold: () => import('@fontsource/literata/files/literata-vietnamese-600-normal.woff?url'),
  },
  {
    regular: () =>
      import('@fontsource/noto-sans-hebrew/files/noto-sans-hebrew-hebrew-400-normal.woff?url'),
    bold: () =>
      import('@fontsource/noto-sans-hebrew/files/noto-sans-hebrew-hebrew-600-normal.woff?url'),
  },
  {
    regular: () =>
      import('@fontsource/noto-sans-arabic/files/noto-sans-arabic-arabic-400-normal.woff?url'),
    bold: () =>
      import('@fontsource/noto-sans-arabic/files/noto-sans-arabic-arabic-600-normal.woff?url'),
  },
  {
    regular: () =>
      import(
        '@fontsource/noto-sans-georgian/files/noto-sans-georgian-georgian-400-normal.woff?url'
      ),
    bold: () =>
      import(
        '@fontsource/noto-sans-georgian/files/noto-sans-georgian-georgian-600-normal.woff?url'
      ),
  },
  {
    regular: () =>
      import(
        '@fontsource/noto-sans-armenian/files/noto-sans-armenian-armenian-400-normal.woff?url'
      ),
    bold: () =>
      import(
        '@fontsource/noto-sans-armenian/files/noto-sans-armenian-armenian-600-normal.woff?url'
      ),
  },
];

export interface Face {
  readonly name: string;
  readonly bytes: Uint8Array;
  readonly font: Font;
}

const loaded = new Map<string, Promise<Face>>();

function load(index: number, weight: Weight): Promise<Face> {
  const name = `${weight}-${index}`;
  const known = loaded.get(name);
  if (known) return known;
  const fetched = (async () => {
    const { default: url } = await (FILES[index] as (typeof FILES)[number])[weight]();
    const response = await fetch(url);
    if (!response.ok) throw new Error(`a typeface could not be fetched (${response.status})`);
    const bytes = new Uint8Array(await response.arrayBuffer());
    return { name, bytes, font: create(bytes as Buffer) as Font };
  })();
  loaded.set(name, fetched);
  fetched.catch(() => loaded.delete(name));
  return fetched;
}

/** Marks that are written with the letters around them. */
const JOINED = /\s|\p{Mark}|\p{Format}/u;

export interface Run {
  readonly text: string;
  readonly face: Face;
}

/** What a text's letters need, and those that no face has. */
export interface Faces {
  readonly faces: readonly Face[];
  readonly missing: readonly string[];
  /** Cuts a text into runs of one face each; letters without a face are set as the first face's box. */
  readonly runs: (text: string, bold: boolean) => readonly Run[];
}

/** Fetches the faces that the given texts need. */
export async function facesFor(
  texts: readonly { readonly text: string; readonly bold: boolean }[],
): Promise<Faces> {
  const found = new Map<string, Face>();
  const used = new Map<string, Face>();
  const missing = new Set<string>();
  for (const weight of ['regular', 'bold'] as const) {
    const letters = new Set(
      texts.filter(({ bold }) => bold === (weight === 'bold')).flatMap(({ text }) => [...text]),
    );
    if (letters.size === 0) continue;
    const first = await load(0, weight);
    used.set(first.name, first);
    for (const letter of letters) {
      const point = letter.codePointAt(0) as number;
      let own: Face | null = null;
      for (let i = 0; i < FILES.length && !own; i++) {
        const face = await load(i, weight);
        if (face.font.hasGlyphForCodePoint(point)) own = face;
      }
      if (own) used.set(own.name, own);
      else if (!JOINED.test(letter)) missing.add(letter);
      found.set(`${weight}${letter}`, own ?? first);
    }
  }
  const runs = (text: string, bold: boolean): readonly Run[] => {
    const weight = bold ? 'bold' : 'regular';
    const cut: { text: string; face: Face }[] = [];
    for (const letter of text) {
      const last = cut.at(-1);
      const face = found.get(`${weight}${letter}`);
      if (!face) continue;
      if (last && (last.face === face || JOINED.test(letter))) last.text += letter;
      else cut.push({ text: letter, face });
    }
    return cut;
  };
  return { faces: [...used.values()], missing: [...missing], runs };
}
