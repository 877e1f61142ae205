/** What is wanted and asked of a sitting, who is in a group, and taking what the plan found. */

import { USUAL_GROUP as USUAL } from '../../plan/group';
import type { Asked, Setting } from '../../plan/types';
import { formatLength } from '../../readings/format';
import { wantedCompany } from '../company';
import type { ActionContext } from '../follow';
import { gatheredGroup, groupEyesAt } from '../group-frame';
import { MOST } from '../limits';
import { cameraParts } from '../plan-camera';
import type { Group, GroupRow, Letter, PlanPart, PlanWanted, Session, View } from '../types';
import { action, editPictures, pictureOf } from './action';
import { editKit, freeId } from './kit-edit';

const editPlan = (session: Session, change: Partial<PlanPart>): Session => ({
  ...session,
  plan: { ...session.plan, ...change },
});

/** "Headshot", or "Own frame" where no framing is named. */
const framingName = (framing: string | null, { models }: ActionContext): string =>
  framing === null ? 'Own frame' : (models.framings.get(framing)?.name ?? framing);

/**
 * What a named framing brings: its orientation, the eyes' usual place and its usual height. Of a group it
 * leaves the orientation, and the eyes sit where rows and framing have them.
 */
function framed(
  session: Session,
  { framing, of }: Partial<Pick<PlanWanted, 'framing' | 'of'>>,
  { models }: ActionContext,
): Partial<PlanWanted> | null {
  if (framing === undefined || framing === null) return {};
  const model = models.framings.get(framing);
  if (!model) return null;
  const { group } = session.plan;
  const together = of === 'group' ? gatheredGroup(session, models) : null;
  return group && together
    ? { eyesAt: groupEyesAt(group, together, model, models), frameHeight: null }
    : { orientation: model.orientation, eyesAt: model.eyesAt, frameHeight: null };
}

/** Another picture that is wanted, after the others. */
export const addWanted = action<Partial<Omit<PlanWanted, 'id'>>>({
  edit: (session, told, context) => {
    const { wanted } = session.plan;
    const brought = framed(session, told, context);
    if (wanted.length >= MOST.wanted || brought === null) return session;
    const { orientation, eyesAt, frameHeight } = session.crop;
    const added: PlanWanted = {
      framing: null,
      // A frame of its own starts as the pictures are framed; that of a group is as wide as it needs.
      frameHeight: told.framing || told.of === 'group' ? null : frameHeight,
      orientation: told.of === 'group' ? 'landscape' : orientation,
      eyesAt,
      cameraHeight: 0,
      of: '1',
      ...brought,
      ...told,
      id: freeId('wanted', wanted),
    };
    return editPlan(session, { wanted: [...wanted, added] });
  },
  label: (_, { framing = null }, context) => `Wanted: ${framingName(framing, context)}`,
});

/** Changes a picture that is wanted; what is left out stays, or is the framing's where that is changed. */
export const setWanted = action<{ wanted: string } & Partial<Omit<PlanWanted, 'id'>>>({
  edit: (session, { wanted: id, ...change }, context) => {
    const now = session.plan.wanted.find((each) => each.id === id);
    if (!now) return session;
    const { framing = now.framing, of = now.of } = change;
    // A group is framed anew where it comes in or goes.
    const reframed = (of === 'group') !== (now.of === 'group') && now.frameHeight === null;
    const brought =
      change.framing !== undefined || reframed ? framed(session, { framing, of }, context) : {};
    if (brought === null) return session;
    return editPlan(session, {
      wanted: session.plan.wanted.map((each) =>
        each === now ? { ...each, ...brought, ...change } : each,
      ),
    });
  },
  label: (after, { wanted: id }, context) => {
    const wanted = after.plan.wanted.find((each) => each.id === id);
    return `${framingName(wanted?.framing ?? null, context)} changed`;
  },
});

export const removeWanted = action<{ wanted: string }>({
  edit: (session, { wanted: id }) =>
    editPlan(session, { wanted: session.plan.wanted.filter((each) => each.id !== id) }),
  label: () => 'Framing dropped',
});

/** Puts a wanted picture at another place of the list, counted from 0: the order of shooting. */
export const moveWanted = action<{ wanted: string; to: number }>({
  edit: (session, { wanted: id, to }) => {
    const { wanted } = session.plan;
    const moved = wanted.find((each) => each.id === id);
    if (!moved) return session;
    const others = wanted.filter((each) => each !== moved);
    return editPlan(session, { wanted: others.toSpliced(Math.max(0, to), 0, moved) });
  },
  label: () => 'Framings in another order',
});

/** What is asked of every picture; null asks no more for it, what is left out stays. */
export const setAsked = action<Partial<Asked>>({
  edit: (session, asked) => editPlan(session, { asked: { ...session.plan.asked, ...asked } }),
  label: () => 'Asked of the pictures changed',
});

/** The picture that a chosen result is hung in. */
export const setPlanPicture = action<{ letter: Letter }>({
  edit: (session, { letter }) => editPlan(session, { picture: letter }),
  label: (_, { letter }) => `Results hung in ${letter}`,
});

const NEW_GROUP = {
  rowSpacing: USUAL.rowSpacing.value,
  step: USUAL.step.value,
  curve: 'straight',
} as const;
/** From head to head, metres: common practice, no source (`USUAL_GROUP.shoulderGap`). */
const USUAL_SPACING = 0.6;

/** Spacing of the rows, height of a step, straight or curved; null: no group. */
export const setGroup = action<{ to: Partial<Omit<Group, 'rows'>> | null }>({
  edit: (session, { to }) => {
    const { group } = session.plan;
    if (to === null) {
      const wanted = session.plan.wanted.map((each) =>
        each.of === 'group' ? { ...each, of: '1' as const } : each,
      );
      return editPlan(session, { group: null, wanted });
    }
    return group === null ? session : editPlan(session, { group: { ...group, ...to } });
  },
  label: (_, { to }) => (to === null ? 'No group' : 'Group changed'),
});

/** Those of the models that are known, so many as the group still takes. */
const taken = (
  models: readonly string[],
  others: readonly GroupRow[],
  { models: { sitters } }: ActionContext,
): readonly string[] => {
  const left = MOST.group - others.reduce((sum, row) => sum + row.models.length, 0);
  return models.filter((id) => sitters.has(id)).slice(0, Math.max(0, left));
};

/** Another row, behind the others; the first one makes the group. */
export const addRow = action<Pick<GroupRow, 'place' | 'models'> & { spacing?: number }>({
  edit: (session, { place, models, spacing = USUAL_SPACING }, context) => {
    const { group } = session.plan;
    const rows = group?.rows ?? [];
    const people = taken(models, rows, context);
    if (people.length === 0 || rows.length >= MOST.rows) return session;
    return editPlan(session, {
      group: { ...NEW_GROUP, ...group, rows: [...rows, { place, models: people, spacing }] },
    });
  },
  label: (_, { place }) => `Row added: ${PLACE_WORDS[place]}`,
});

const PLACE_WORDS: Readonly<Record<GroupRow['place'], string>> = {
  seated: 'seated',
  standing: 'standing',
  step: 'on a step',
};

/** Changes a row, counted from 0 at the camera; what is left out stays. A row without people goes. */
export const setRow = action<{ row: number } & Partial<GroupRow>>({
  edit: (session, { row, ...change }, context) => {
    const { group } = session.plan;
    const now = group?.rows[row];
    if (!group || !now) return session;
    const others = group.rows.filter((each) => each !== now);
    const models = taken(change.models ?? now.models, others, context);
    if (models.length === 0) return removeRow.edit(session, { row }, context);
    return editPlan(session, {
      group: { ...group, rows: group.rows.with(row, { ...now, ...change, models }) },
    });
  },
  label: (_, { row }) => `Row ${row + 1} changed`,
});

/** Takes a row away; without rows there is no group. */
export const removeRow = action<{ row: number }>({
  edit: (session, { row }, context) => {
    const { group } = session.plan;
    if (!group || group.rows[row] === undefined) return session;
    const rows = group.rows.toSpliced(row, 1);
    return rows.length === 0
      ? setGroup.edit(session, { to: null }, context)
      : editPlan(session, { group: { ...group, rows } });
  },
  label: (_, { row }) => `Row ${row + 1} removed`,
});

/**
 * Hangs what the plan found: the crop, and in one picture the standpoint, lens, aperture and camera height,
 * on the body that it was found for.
 */
export const hangPlanned = action<{
  letter: Letter;
  wanted: string;
  camera: string;
  setting: Pick<Setting, 'standpoint' | 'frameHeight' | 'mark' | 'fNumber'>;
}>({
  edit: (session, { letter, wanted: id, camera, setting }) => {
    const wanted = session.plan.wanted.find((each) => each.id === id);
    const parts = cameraParts(session, camera);
    if (!wanted || !parts || !pictureOf(session, letter)) return session;
    const view: View =
      session.kept === 'lens' ? { by: 'lens', focal: setting.mark } : { by: 'crop' };
    const hung = editPictures(session, { letter }, (picture) => ({
      ...picture,
      of: wantedCompany(session, wanted),
      standpoint: setting.standpoint,
      view,
      fNumber: setting.fNumber,
      cameraHeight: wanted.cameraHeight,
      tilt: 0,
      lens: parts.lens,
    }));
    return editKit(
      {
        ...hung,
        crop: {
          hold: 'frame-height',
          framing: wanted.framing,
          frameHeight: setting.frameHeight,
          orientation: wanted.orientation,
          eyesAt: wanted.eyesAt,
          eyesAcross: 0.5,
        },
        plan: { ...session.plan, picture: letter },
      },
      (kit) => ({ ...kit, body: parts.body.id }),
    );
  },
  label: (after, { letter, wanted: id }, context) => {
    const wanted = after.plan.wanted.find((each) => each.id === id);
    const standpoint = pictureOf(after, letter)?.standpoint ?? 0;
    return `${letter}: ${framingName(wanted?.framing ?? null, context)} from ${formatLength(standpoint, after.units, 'distance')}`;
  },
});
