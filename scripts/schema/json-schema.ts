/** The session file's JSON Schema, made from the schema that reads it. */
import { toJsonSchema } from '@valibot/to-json-schema';
import * as v from 'valibot';
import { FORMAT } from '../../src/session/decode';
import { lamp, person, picture, sessionSchema } from '../../src/session/schema';
import { handout } from '../../src/session/schema-handout';
import { kit, ownLens, plan, room } from '../../src/session/schema-plan';
import { SESSION_VERSION } from '../../src/session/types';

const envelope = v.object({ format: v.literal(FORMAT), session: sessionSchema });

/** Conditions between values, which JSON Schema has no words for: they stand as comments. */
const REMARK = 'also checked: ';

/** The JSON Schema (draft 2020-12) of a session file of the present version. */
export function sessionJsonSchema(): Record<string, unknown> {
  const { $schema, ...schema } = toJsonSchema(envelope, {
    target: 'draft-2020-12',
    typeMode: 'input',
    definitions: { person, picture, lamp, kit, ownLens, room, plan, handout },
    overrideAction: ({ valibotAction, jsonSchema }) => {
      // JSON has no other numbers.
      if (valibotAction.type === 'finite') return jsonSchema;
      if (valibotAction.type === 'check')
        return { ...jsonSchema, $comment: REMARK + String(Reflect.get(valibotAction, 'message')) };
      return undefined;
    },
  });
  return {
    $schema,
    title: `A Standpoint session file, version ${SESSION_VERSION}`,
    $comment: 'Made by npm run schema; what the parts mean is told in session-file.md.',
    ...schema,
  };
}
