/** Kit, light, room, the move and the session's own texts. */
import { sidesForCameraWall } from '../../plan/run';
import { demoSession } from '../demo';
import { bodyOf, kitOf, lensesOf } from '../kit';
import { known } from '../known';
import { type LampName, type LampSetting, USUAL_LIGHT } from '../light';
import { clamp, LIMITS, NOTES_LENGTH, TITLE_LENGTH } from '../limits';
import type { Room, Session } from '../types';
import { action } from './action';
import { editKit, mapSome } from './kit-edit';

/** The sensor format and what it records. */
export const setFormat = action<{ format: string; megapixels?: number }>({
  edit: (session, { format, megapixels }, { models }) => {
    if (!models.formats.has(format)) return session;
    const used = bodyOf(session);
    const edited = { ...used, format, megapixels: megapixels ?? used.megapixels };
    return editKit(session, (kit) => ({
      ...kit,
      bodies: mapSome(kit.bodies, (body) => (body.id === used.id ? edited : body)),
    }));
  },
  label: (after, _, { models }) => `Format: ${known(models.formats, bodyOf(after).format).name}`,
});

/** The lenses that are there, each once; unknown ones are left out. */
export const setKit = action<{ lenses: readonly string[] }>({
  edit: (session, { lenses }, { models }) =>
    editKit(session, (kit) => ({
      ...kit,
      lenses: [...new Set(lenses)].filter((id) => lensesOf(session, models).has(id)),
    })),
  label: (after) => {
    const { length } = kitOf(after).lenses;
    return `Kit of ${length} ${length === 1 ? 'lens' : 'lenses'}`;
  },
});

const LAMP_WORDS: Readonly<Record<LampName, string>> = {
  key: 'Key light',
  fill: 'Fill light',
  hair: 'Hair light',
  background: 'Background light',
};

/** Moves one light, or makes it stronger or softer; what is left out stays. */
export const setLight = action<{ lamp: LampName } & Partial<LampSetting>>({
  edit: (session, { lamp, ...setting }) => ({
    ...session,
    light: { ...session.light, [lamp]: { ...session.light[lamp], ...setting } },
  }),
  label: (after, { lamp, strength }) => {
    if (strength === undefined) return `${LAMP_WORDS[lamp]} moved`;
    return `${LAMP_WORDS[lamp]} ${after.light[lamp].strength === 0 ? 'off' : 'set'}`;
  },
});

/** All four lights in their usual places. */
export const resetLight = action<Record<string, never>>({
  edit: (session) => ({ ...session, light: USUAL_LIGHT }),
  label: () => 'Lights in their usual places',
});

export const setRoom = action<Partial<Room>>({
  edit: (session, room) => ({ ...session, room: { ...session.room, ...room } }),
  label: () => 'Room changed',
});

/** Eyes to the wall behind the camera, metres: the room becomes longer or shorter along the axis. */
export const setCameraWall = action<{ to: number }>({
  edit: (session, { to }) => {
    const wall = clamp(to, LIMITS.cameraWall);
    return { ...session, room: { ...session.room, ...sidesForCameraWall(session.room, wall) } };
  },
  label: () => 'Room changed',
});

/** Ends and length of the move, seconds. */
export const setPlay = action<Partial<Session['play']>>({
  edit: (session, play) => ({ ...session, play: { ...session.play, ...play } }),
  label: (after) => `Move from ${after.play.from} to ${after.play.to}`,
});

/** Height of the print whose viewing distance is read, metres. */
export const setPrintHeight = action<{ to: number }>({
  edit: (session, { to }) => ({ ...session, printHeight: to }),
  label: () => 'Print height set',
});

export const setUnits = action<{ to: Session['units'] }>({
  edit: (session, { to }) => ({ ...session, units: to }),
  label: (_, { to }) => (to === 'metric' ? 'Metres' : 'Feet and inches'),
});

export const setTitle = action<{ to: string }>({
  edit: (session, { to }) => ({ ...session, title: to.slice(0, TITLE_LENGTH) }),
  label: () => 'Title changed',
});

export const setNotes = action<{ to: string }>({
  edit: (session, { to }) => ({ ...session, notes: to.slice(0, NOTES_LENGTH) }),
  label: () => 'Notes changed',
});

export const resetToDemo = action<Record<string, never>>({
  edit: () => demoSession(),
  label: () => 'Demo session',
});
