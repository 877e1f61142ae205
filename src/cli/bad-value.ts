/** What the user asked cannot be done; `message` is the one line they read. */
export class BadValue extends Error {
  override readonly name = 'BadValue';
}
