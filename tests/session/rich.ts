import * as handout from '../../src/session/actions/handout-page';
import * as actions from '../../src/session/actions/plan-page';
import { demoSession } from '../../src/session/demo';
import type { Session } from '../../src/session/types';
import { context } from './fixtures';

/** A session with something of everything in it. */
export const rich: Session = [
  (session: Session) => actions.setKept.edit(session, { to: 'lens' }, context),
  (session: Session) => actions.addPicture.edit(session, {}, context),
  (session: Session) => actions.cutFromLens.edit(session, { letter: 'B', focal: 0.05 }, context),
  (session: Session) => actions.addPerson.edit(session, { model: 'adult-man' }, context),
  (session: Session) => actions.setCompany.edit(session, { letter: 'C', of: ['2', '1'] }, context),
  (session: Session) =>
    actions.setLooks.edit(
      session,
      { looks: { glasses: true, colours: { hair: '#101010' } } },
      context,
    ),
  (session: Session) =>
    actions.setGaze.edit(session, { person: '2', to: { yaw: 0.2, pitch: 0 } }, context),
  (session: Session) => actions.setPose.edit(session, { arms: 'lap', lean: 0.1 }, context),
  (session: Session) =>
    actions.setDimension.edit(session, { dimension: 'nose_breadth', to: 40 }, context),
  (session: Session) =>
    actions.setNotes.edit(session, { to: 'Grüße an alle: “f/4”, 两米 \u{1F3AD}\n' }, context),
  (session: Session) => handout.keepComparison.edit(session, { name: 'Near and far' }, context),
  (session: Session) =>
    handout.setAuthor.edit(session, { name: 'The village hall’s photographer' }, context),
  (session: Session) =>
    handout.addPage.edit(session, { kind: 'client', comparison: 'comparison-1' }, context),
  (session: Session) =>
    handout.setPageWords.edit(session, { id: 'page-3', place: 'title', to: 'Why' }, context),
].reduce((session, edit) => edit(session), demoSession());
