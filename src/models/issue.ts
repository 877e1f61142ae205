import * as v from 'valibot';

/** "focal_mm.0: expected >0, received -5": the field, what was expected, what stands there. */
export function describeIssue(issue: v.BaseIssue<unknown>): string {
  const path = v.getDotPath(issue);
  const field = path === null ? '' : `${path}: `;
  if (issue.expected === null) return field + issue.message;
  if (issue.expected === 'never') return `${field}expected no such field`;
  if (issue.received === 'undefined') return `${field}expected ${plain(issue)}, but it is missing`;
  return `${field}expected ${plain(issue)}, received ${shortened(issue.received)}`;
}

const LONGEST_SHOWN = 60;

const shortened = (received: string): string =>
  received.length <= LONGEST_SHOWN ? received : `${received.slice(0, LONGEST_SHOWN)}…`;

/** A missing key is reported as its quoted name; the words for the rest are valibot's own. */
const plain = (issue: v.BaseIssue<unknown>): string =>
  issue.type === 'strict_object' || issue.type === 'object'
    ? issue.expected === 'Object'
      ? 'an object'
      : 'a value'
    : String(issue.expected).replaceAll('"', "'");
