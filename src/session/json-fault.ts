/** Where JSON text breaks off. Engines name a position for some faults alone, each in its own words. */

/** What may come next, by the grammar of RFC 8259. */
type Expected = 'value' | 'value-or-close' | 'key' | 'key-or-close' | 'colon' | 'more' | 'end';

const SPACE = /[ \t\n\r]*/y;
const SCALAR = /true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
// biome-ignore lint/suspicious/noControlCharactersInRegex: JSON forbids them in its strings
const PLAIN = /[^"\\\u0000-\u001f]*/y;
const ESCAPE = /\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4})/y;

/** The place after a match, or null. */
function after(pattern: RegExp, text: string, at: number): number | null {
  pattern.lastIndex = at;
  return pattern.test(text) ? pattern.lastIndex : null;
}

/** The place after a string whose quote opens at `at`; where it breaks off, told as a negative place less 1. */
function afterString(text: string, at: number): number {
  let i = at + 1;
  for (;;) {
    i = after(PLAIN, text, i) ?? i;
    if (text[i] === '"') return i + 1;
    const next = after(ESCAPE, text, i);
    if (next === null) return -1 - i;
    i = next;
  }
}

/** The first place, counted from 0, at which text stops being JSON; null when it is JSON. */
export function jsonFault(text: string): number | null {
  /** Closers of what is open, the inmost last. */
  const open: ('}' | ']')[] = [];
  let expected: Expected = 'value';
  let i = 0;
  const closed = (): Expected => (open.length === 0 ? 'end' : 'more');
  for (;;) {
    i = after(SPACE, text, i) ?? i;
    const character = text[i];
    if (character === undefined) return expected === 'end' ? null : i;
    switch (expected) {
      case 'end':
        return i;
      case 'colon':
        if (character !== ':') return i;
        expected = 'value';
        i++;
        continue;
      case 'more':
        if (character === ',') expected = open.at(-1) === '}' ? 'key' : 'value';
        else if (character === open.at(-1)) {
          open.pop();
          expected = closed();
        } else return i;
        i++;
        continue;
    }
    const mayClose = expected === 'key-or-close' || expected === 'value-or-close';
    if (mayClose && character === open.at(-1)) {
      open.pop();
      expected = closed();
      i++;
      continue;
    }
    const isKey: boolean = expected === 'key' || expected === 'key-or-close';
    if (character === '"') {
      const next = afterString(text, i);
      if (next < 0) return -1 - next;
      i = next;
      expected = isKey ? 'colon' : closed();
    } else if (isKey) return i;
    else if (character === '{' || character === '[') {
      open.push(character === '{' ? '}' : ']');
      expected = character === '{' ? 'key-or-close' : 'value-or-close';
      i++;
    } else {
      const next = after(SCALAR, text, i);
      if (next === null) return i;
      i = next;
      expected = closed();
    }
  }
}

/** Line of the fault, counted from 1; null when the text is JSON. */
export function jsonFaultLine(text: string): number | null {
  const at = jsonFault(text);
  if (at === null) return null;
  // Where the text ends too early, its last line that holds anything.
  const before = at >= text.trimEnd().length ? text.trimEnd() : text.slice(0, at);
  return before.split('\n').length;
}
