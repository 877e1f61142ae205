import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoSession } from '../../src/session/demo';
import { shareEqual } from '../../src/session/share';

describe('sharing equal parts', () => {
  it('keeps what is equal and takes what is not', () => {
    const before = demoSession();
    const after = structuredClone({ ...before, title: 'Another' });
    const shared = shareEqual(before, after);
    expect(shared).toEqual(after);
    expect(shared.people).toBe(before.people);
    expect(shared.pictures).toBe(before.pictures);
    expect(shareEqual(before, structuredClone(before))).toBe(before);
  });

  it('never changes the value, whatever the JSON', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (before, after) => {
        expect(shareEqual(before, after)).toEqual(after);
      }),
    );
  });
});
