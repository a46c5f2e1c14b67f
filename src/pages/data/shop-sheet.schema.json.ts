/** The schema of a shop sheet, for whoever writes one by another program. Made of the schema that the door itself uses. */
import { toJsonSchema } from '@valibot/to-json-schema'
import { shopSheetSchema } from '../../data/shop-schema'

const schema = {
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  ...toJsonSchema(shopSheetSchema, {
    target: 'draft-2020-12',
    typeMode: 'input',
    errorMode: 'ignore',
    // Classes of characters are not known to every validator, which would then refuse the schema as a whole.
    overrideAction: ({ valibotAction, jsonSchema: { pattern, ...rest } }) =>
      'requirement' in valibotAction && valibotAction.requirement instanceof RegExp && valibotAction.requirement.unicode
        ? rest
        : undefined
  }),
  title: 'Bentwise shop sheet, version 1',
  description:
    'What a timber framing shop supplies and charges. Money is in the shop’s own currency, per board foot where not said otherwise. Beyond this schema each wood and each way of seasoning may stand once, and text holds no control characters but the line’s end.'
}

export const GET = (): Response =>
  new Response(`${JSON.stringify(schema, null, 2)}\n`, { headers: { 'Content-Type': 'application/schema+json' } })
