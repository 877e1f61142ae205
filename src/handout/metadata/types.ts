/** What a picture file says of itself. */

/** What an independent program may call a camera's settings; only what is true of every picture in the file. */
export interface Shot {
  /** Focal length as it acts, metres. */
  readonly focal?: number;
  readonly fNumber?: number;
  /** Entrance pupil to the eyes, straight, metres. */
  readonly distance?: number;
  /** Focal length of the same angle over the diagonal of 36 x 24 mm, metres. */
  readonly equivalent?: number;
}

/** How much of a session a file holds: what its pictures hang on, or all of it. */
export type Holds = 'pictures' | 'session';

export interface State {
  readonly holds: Holds;
  /** As `packSession` gives it. */
  readonly packed: string;
}

export interface Metadata {
  readonly description: string;
  readonly shot: Shot;
  readonly state: State | null;
}

export const SOFTWARE = 'Standpoint';
