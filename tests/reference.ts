/** The real reference and the sample shop sheet, built once for the tests. */
import * as v from 'valibot'
import { content, sampleShop } from '../src/data/content'
import { buildReference } from '../src/data/reference'
import { shopSheetSchema } from '../src/data/shop-schema'

export const reference = buildReference(content)
export const sheet = v.parse(shopSheetSchema, sampleShop)
