/** What the handout of a session must hold. */
import * as v from 'valibot';
import { PAGE_KINDS, PAGE_PARTS, PAPERS, TEMPLATES } from './handout';
import { LOGO_LENGTH, MOST, PAGE_WORDS_LENGTH } from './limits';
import { id, many, name, orientation } from './schema-parts';

/** A name in a page's words that an object of JavaScript has a meaning of its own for is no place of a page. */
const place = v.pipe(v.string(), v.regex(/^[a-z]+[0-9]*$/), v.maxLength(40));

export const handout = v.strictObject({
  template: v.picklist(TEMPLATES),
  paper: v.picklist(PAPERS),
  orientation,
  author: v.strictObject({
    name,
    words: v.pipe(v.string(), v.maxLength(PAGE_WORDS_LENGTH)),
    logo: v.nullable(
      v.pipe(
        v.string(),
        v.maxLength(LOGO_LENGTH),
        v.regex(/^data:image\/(png|jpeg);base64,[A-Za-z0-9+/=]+$/),
      ),
    ),
  }),
  pages: many(
    v.strictObject({
      id,
      kind: v.picklist(PAGE_KINDS),
      comparison: v.nullable(id),
      parts: v.pipe(
        v.array(v.picklist(PAGE_PARTS)),
        v.check((parts) => new Set(parts).size === parts.length, 'expected each part once'),
      ),
      words: v.record(place, v.pipe(v.string(), v.maxLength(PAGE_WORDS_LENGTH))),
    }),
    MOST.pages,
  ),
});
