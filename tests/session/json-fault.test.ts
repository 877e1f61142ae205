import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jsonFault, jsonFaultLine } from '../../src/session/json-fault';

const engine = (text: string): { ok: boolean; position: number | null } => {
  try {
    JSON.parse(text);
    return { ok: true, position: null };
  } catch (error) {
    const position = /position (\d+)/.exec((error as Error).message)?.[1];
    return { ok: false, position: position === undefined ? null : Number(position) };
  }
};

describe('where JSON breaks off', () => {
  it.each([
    ['', 0],
    ['{', 1],
    ['{"a": 1,}', 8],
    ['{"a" 1}', 5],
    ['[1, 2', 5],
    ['[1 2]', 3],
    ['[01]', 2],
    ['[1.]', 2],
    ['"a\nb"', 2],
    ['"\\x"', 1],
    ['"\\u12g4"', 1],
    ['nul', 0],
    ['{} x', 3],
    ["{'a': 1}", 1],
    ['[}', 1],
    ['NaN', 0],
  ])('%j: at %i', (text, at) => {
    expect(jsonFault(text)).toBe(at);
    expect(engine(text).ok).toBe(false);
  });

  it.each(['0', '-0.5e+10', '"\\u00e9\\n\u007f"', ' [ ] ', '{"a":{"b":[1,{"c":null}]}}'])(
    'not in %j',
    (text) => {
      expect(jsonFault(text)).toBeNull();
      expect(jsonFaultLine(text)).toBeNull();
    },
  );

  it('is told just where the engine refuses, and at its place where it names one', () => {
    const spoilt = fc
      .tuple(
        fc.json(),
        fc.array(fc.tuple(fc.nat(), fc.constantFrom(...'{}[],:"\\0-.eE \nxu'), fc.boolean()), {
          maxLength: 3,
        }),
      )
      .map(([text, edits]) =>
        edits.reduce((now, [at, put, over]) => {
          const place = at % (now.length + 1);
          return now.slice(0, place) + put + now.slice(place + (over ? 1 : 0));
        }, text),
      );
    let told = 0;
    fc.assert(
      fc.property(spoilt, (text) => {
        const { ok, position } = engine(text);
        const at = jsonFault(text);
        expect(at === null).toBe(ok);
        if (position !== null && at !== null) {
          told++;
          // Inside a number or an escape the engine counts on to the very character.
          expect(position - at).toBeGreaterThanOrEqual(0);
          expect(text.slice(at, position)).not.toMatch(/[{}[\],:\s]/);
        }
      }),
      { seed: 11, numRuns: 4000 },
    );
    expect(told).toBeGreaterThan(500);
  });

  it('is told by its line, also in deep and in long text', () => {
    expect(jsonFaultLine('{\n "a": 1,\n "b": }\n')).toBe(3);
    expect(jsonFaultLine('{\n "a": 1\n\n\n')).toBe(2);
    expect(jsonFaultLine(`${'['.repeat(1_000_000)}\n`)).toBe(1);
    expect(jsonFaultLine(`["${'a'.repeat(3_000_000)}\n`)).toBe(1);
    expect(jsonFaultLine(`["${'\\n'.repeat(1_000_000)}",\n`)).toBe(1);
  });
});
